import { css } from "lit";

export const puckPanelStyles = css`
  fieldset {
    border: none;
    border-top: 1px solid var(--rule);
    margin: 0;
    padding: 0.5rem 0 0;
    display: grid;
    gap: 0.4rem;
    min-width: 0;
  }
  legend {
    font-weight: 700;
    font-size: 0.9rem;
    padding: 0 0.4rem 0 0;
  }
  .row input[type="text"] {
    width: 100%;
  }
  textarea {
    width: 100%;
    min-height: 5.5rem;
    font-variant-numeric: tabular-nums;
    font-size: 0.88rem;
  }
`;
