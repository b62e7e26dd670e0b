import { css } from "lit";

export const quantityFieldStyles = css`
  :host {
    display: block;
    min-width: 0;
  }
  .line {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 6.2rem 3.9rem;
    gap: 0.4rem;
    align-items: center;
  }
  label {
    font-size: 0.9rem;
    line-height: 1.2;
  }
  input {
    width: 100%;
    text-align: right;
    font-variant-numeric: tabular-nums;
  }
  input[aria-invalid="true"] {
    border-color: var(--alarm);
    border-width: 2px;
  }
  .unit {
    font-size: 0.88rem;
    color: var(--ink-soft);
  }
  select {
    width: 100%;
    padding-inline: 0.2rem;
    font-size: 0.88rem;
  }
`;
