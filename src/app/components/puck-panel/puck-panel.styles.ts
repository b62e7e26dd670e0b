import { css } from "lit";

export const puckPanelStyles = css`
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
