import { css } from "lit";

export const quantityFieldStyles = css`
  :host {
    display: block;
    min-width: 0;
  }
  .line {
    display: grid;
    grid-template-columns: minmax(0, 1fr) var(--field-number, 6.2rem) var(--field-unit, 3.9rem);
    gap: 0.4rem;
    align-items: center;
  }
  label {
    font-size: var(--field-text, 0.9rem);
    line-height: 1.2;
  }
  input {
    width: 100%;
    text-align: right;
    font-variant-numeric: tabular-nums;
    font-size: var(--field-text, inherit);
  }
  input[aria-invalid="true"] {
    border-color: var(--alarm);
    border-width: 2px;
  }
  .unit {
    font-size: var(--field-small, 0.88rem);
    color: var(--ink-soft);
  }
  select {
    width: 100%;
    padding-inline: 0.1rem;
    font-size: var(--field-small, 0.88rem);
  }
`;
