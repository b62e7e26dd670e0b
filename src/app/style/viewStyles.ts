import { css } from "lit";

/**
 * What the views with plots have in common: layout, columns, and the look of their sections. They are in the light DOM,
 * because plots inside them must be; each view adopts this before its own rules.
 */
export const viewStyles = css`
  .view-layout {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.9rem;
    padding: 0.9rem clamp(0.6rem, 2vw, 1.6rem) 1.5rem;
  }
  .view-column {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.9rem;
    align-content: start;
    min-width: 0;
  }
  .view-section {
    background: var(--sheet);
    border: 1px solid var(--rule);
    border-radius: 3px 14px 3px 3px;
    padding: 0.8rem 0.9rem;
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.7rem;
    min-width: 0;
  }
  .view-section h2,
  .view-section h3 {
    margin: 0;
    line-height: 1.2;
  }
  .view-section h2 {
    font-size: 1.08rem;
  }
  .view-section h3 {
    font-size: 1rem;
  }
  .view-section p {
    margin: 0;
    overflow-wrap: anywhere;
  }
  .view-section .hint {
    color: var(--ink-soft);
    font-size: 0.84rem;
  }
  .view-section .error {
    color: var(--alarm);
    font-size: 0.86rem;
  }
  .view-section ul.error,
  .view-section ul.hint {
    margin: 0;
    padding-left: 1.1rem;
    display: grid;
    gap: 0.2rem;
    overflow-wrap: anywhere;
  }
  .view-section .line {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
    align-items: center;
  }
  .view-section .line button,
  .view-section .line .file span {
    font-size: 0.9rem;
  }
  .view-section .file span {
    display: inline-block;
    border: 1px solid var(--edge);
    border-radius: 2px 9px 2px 2px;
    background: var(--sheet);
    padding: 0.35rem 0.8rem;
    cursor: pointer;
  }
  .view-section .file:focus-within span {
    outline: 3px solid var(--focus);
    outline-offset: 2px;
  }
  .view-section .row {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1.35fr);
    gap: 0.4rem;
    align-items: center;
    font-size: 0.9rem;
  }
  .view-section .row .pair {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    gap: 0.3rem;
    align-items: center;
  }
  .view-section select,
  .view-section input[type="text"],
  .view-section textarea {
    border: 1px solid var(--edge);
    border-radius: 2px;
    background: var(--sheet);
    padding: 0.25rem 0.4rem;
    min-width: 0;
    width: 100%;
  }
  .view-section textarea {
    font-family: monospace;
    font-size: 0.85rem;
  }
  .view-section button.is-quiet {
    border-color: transparent;
    background: none;
    color: var(--accent);
    padding: 0.2rem 0.4rem;
  }
  .view-section .caution {
    border-left: 6px solid var(--ember);
    padding: 0.4rem 0.7rem;
    background: var(--wash);
    font-size: 0.9rem;
  }
  .view-section .scroll {
    overflow-x: auto;
  }
  .view-section table.results {
    border-collapse: collapse;
    font-size: 0.86rem;
    font-variant-numeric: tabular-nums;
    min-width: 100%;
  }
  .view-section table.results th,
  .view-section table.results td {
    text-align: left;
    padding: 0.25rem 0.9rem 0.25rem 0;
    border-bottom: 1px solid var(--rule);
    vertical-align: top;
  }
  .view-section table.results tbody th {
    font-weight: 400;
  }
  .view-section ww-plot {
    border: none;
    padding: 0;
  }
  .view-section .verdict {
    font-size: 1.02rem;
    border-left: 6px solid var(--accent);
    padding: 0.3rem 0.7rem;
  }
  .view-section progress {
    flex: 1 1 8rem;
    accent-color: var(--accent);
  }
  @media print {
    .view-layout,
    .view-column {
      display: block;
      padding: 0;
    }
  }
  /* Inputs on the left, what comes of them on the right. */
  @media (min-width: 900px) {
    .view-layout.is-split {
      grid-template-columns: 23rem minmax(0, 1fr);
    }
  }
  @media (min-width: 2200px) {
    .view-layout.is-split {
      grid-template-columns: 24rem minmax(0, 1fr);
    }
    .is-split .is-outcome {
      grid-template-columns: minmax(0, 1.2fr) minmax(0, 1fr);
    }
    .is-split .is-largest {
      grid-row: span 3;
    }
  }
`;
