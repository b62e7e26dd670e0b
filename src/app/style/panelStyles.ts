import { css } from "lit";

/** The look of the input panels. */
export const panelStyles = css`
  :host {
    display: block;
  }
  section {
    background: var(--panel-ground, var(--sheet));
    border: var(--panel-border, 1px solid var(--rule));
    border-radius: 3px 14px 3px 3px;
    padding: var(--panel-padding, 0.8rem 0.9rem 0.9rem);
  }
  .heading {
    display: var(--panel-heading, flex);
    justify-content: space-between;
    align-items: center;
    gap: 0.5rem;
    margin-bottom: 0.6rem;
  }
  .stack {
    display: grid;
    gap: 0.5rem;
  }
  .row {
    display: grid;
    grid-template-columns: var(--panel-row, minmax(0, 1fr) minmax(0, 1.35fr));
    gap: 0.4rem;
    align-items: center;
    font-size: var(--field-text, 0.9rem);
  }
  .row select {
    width: 100%;
  }
  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem;
  }
  .buttons button {
    font-size: 0.9rem;
  }
  .hint {
    margin: 0;
  }
  @media print {
    section {
      padding: 1mm 2mm;
      border: none;
    }
    .heading {
      margin: 0;
    }
  }
`;

/** Groups of fields in a panel. */
export const fieldsetStyles = css`
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
`;
