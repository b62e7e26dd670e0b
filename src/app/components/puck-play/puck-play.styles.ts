import { css } from "lit";

export const puckPlayStyles = css`
  fieldset {
    border: none;
    border-top: 1px solid var(--rule);
    margin: 0;
    padding: 0.5rem 0 0;
    display: grid;
    gap: 0.3rem;
    min-width: 0;
  }
  legend {
    font-weight: 700;
    font-size: 0.9rem;
    padding: 0 0.4rem 0 0;
  }
`;
