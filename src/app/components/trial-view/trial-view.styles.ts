import { css } from "lit";

/** Layout of the view of player trials, and the look that its sections share; those are in the light DOM for their plots. */
export const trialViewStyles = css`
  ww-trial-view {
    display: block;
  }
  @media (min-width: 1000px) {
    ww-trial-view .trial-layout {
      grid-template-columns: 25rem minmax(0, 1fr);
      grid-template-rows: auto 1fr;
    }
    ww-trial-view .is-inputs {
      grid-row: span 2;
    }
  }
  @media (min-width: 2200px) {
    ww-trial-view .trial-layout {
      grid-template-columns: 30rem minmax(0, 1fr) minmax(0, 1fr);
      grid-template-rows: auto;
    }
    ww-trial-view .is-inputs {
      grid-row: auto;
    }
  }
  .trial-section {
    gap: 0.65rem;
  }
  .trial-section ul.error,
  .trial-section ul.said {
    margin: 0;
    padding-left: 1.1rem;
    display: grid;
    gap: 0.3rem;
    overflow-wrap: anywhere;
  }
  .trial-section .file span {
    font-size: 0.9rem;
  }
  .trial-section input[aria-invalid="true"] {
    border: 2px solid var(--alarm);
  }
  .trial-section button[aria-pressed="true"] {
    border-left: 6px solid var(--accent);
    background: var(--wash);
  }
  .trial-section .verdict {
    display: grid;
    gap: 0.35rem;
  }
  .trial-section .caution {
    font-size: 0.88rem;
  }
  .trial-section table {
    border-collapse: collapse;
    font-size: 0.86rem;
    font-variant-numeric: tabular-nums;
  }
  .trial-section table.is-wide {
    min-width: 100%;
  }
  .trial-section th,
  .trial-section td {
    text-align: left;
    padding: 0.25rem 0.8rem 0.25rem 0;
    border-bottom: 1px solid var(--rule);
    vertical-align: top;
  }
  .trial-section tbody th {
    font-weight: 400;
  }
  .trial-section table.is-form td,
  .trial-section table.is-form th {
    padding: 0.15rem 0.3rem 0.15rem 0;
    border-bottom: none;
  }
  .trial-section table.is-form {
    width: 100%;
  }
  .trial-section table.is-form .short {
    width: 4.6rem;
  }
  .trial-section table.is-grid th {
    vertical-align: middle;
  }
  .trial-section .grid-cell {
    display: grid;
    grid-template-columns: auto 3.4rem;
    gap: 0.3rem;
    align-items: center;
  }
  .trial-section .grid-cell input {
    text-align: right;
  }
  .trial-section .code {
    font-family: monospace;
    font-size: 0.95rem;
  }
  .trial-section td .error {
    display: block;
    max-width: 9rem;
    font-size: 0.76rem;
  }
  .trial-section ww-plot {
    /* A plot out of sight keeps its old size until it is looked at. */
    overflow: clip;
  }
  .trial-section .screen {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.65rem;
  }
  .trial-section .line.screen {
    display: flex;
  }
  .trial-section details.screen {
    display: block;
  }
  .trial-section .beside,
  .trial-section .part {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.65rem;
    align-content: start;
  }
  .trial-section .is-stale {
    opacity: 0.6;
  }
  .trial-section .paper {
    display: none;
  }
`;
