import { css } from "lit";

export const puckListFieldStyles = css`
  :host {
    display: block;
    min-width: 0;
  }
  label {
    display: block;
    font-size: 0.9rem;
  }
  input {
    width: 100%;
    font-variant-numeric: tabular-nums;
  }
  input[aria-invalid="true"] {
    border-color: var(--alarm);
    border-width: 2px;
  }
`;
