import { css } from "lit";

/** Layout of the tunnel view, and the look that its sections share; those are in the light DOM for their plots. */
export const tunnelViewStyles = css`
  ww-tunnel-view {
    display: block;
  }
  ww-tunnel-view .tunnel-layout {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.9rem;
    padding: 0.9rem clamp(0.6rem, 2vw, 1.6rem) 1.5rem;
  }
  ww-tunnel-view .tunnel-column {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.9rem;
    align-content: start;
    min-width: 0;
  }
  @media (min-width: 900px) {
    ww-tunnel-view .tunnel-layout {
      grid-template-columns: 23rem minmax(0, 1fr);
    }
  }
  @media (min-width: 2200px) {
    ww-tunnel-view .tunnel-layout {
      grid-template-columns: 24rem minmax(0, 1fr);
    }
    ww-tunnel-view .is-outcome {
      grid-template-columns: minmax(0, 1.2fr) minmax(0, 1fr);
    }
    ww-tunnel-view ww-tunnel-results {
      grid-row: span 3;
    }
  }
  .tunnel-section {
    background: var(--sheet);
    border: 1px solid var(--rule);
    border-radius: 3px 14px 3px 3px;
    padding: 0.8rem 0.9rem;
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.7rem;
    min-width: 0;
  }
  .tunnel-section h2,
  .tunnel-section h3 {
    margin: 0;
    line-height: 1.2;
  }
  .tunnel-section h2 {
    font-size: 1.08rem;
  }
  .tunnel-section h3 {
    font-size: 1rem;
  }
  .tunnel-section p {
    margin: 0;
    overflow-wrap: anywhere;
  }
  .tunnel-section .hint {
    color: var(--ink-soft);
    font-size: 0.84rem;
  }
  .tunnel-section .error {
    color: var(--alarm);
    font-size: 0.86rem;
  }
  .tunnel-section ul.error,
  .tunnel-section ul.hint {
    margin: 0;
    padding-left: 1.1rem;
    display: grid;
    gap: 0.2rem;
    overflow-wrap: anywhere;
  }
  .tunnel-section .line {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
    align-items: center;
  }
  .tunnel-section .line button,
  .tunnel-section .line .file span {
    font-size: 0.9rem;
  }
  .tunnel-section .file span {
    display: inline-block;
    border: 1px solid var(--edge);
    border-radius: 2px 9px 2px 2px;
    background: var(--sheet);
    padding: 0.35rem 0.8rem;
    cursor: pointer;
  }
  .tunnel-section .file:focus-within span {
    outline: 3px solid var(--focus);
    outline-offset: 2px;
  }
  .tunnel-section .row {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1.35fr);
    gap: 0.4rem;
    align-items: center;
    font-size: 0.9rem;
  }
  .tunnel-section .row.is-tall {
    grid-template-columns: minmax(0, 1fr);
    gap: 0.15rem;
  }
  .tunnel-section .line select {
    width: auto;
  }
  .tunnel-section .row .triple {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1.3fr) minmax(0, 1fr);
    gap: 0.3rem;
  }
  .tunnel-section .fields {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.35rem;
    max-width: 40rem;
  }
  .tunnel-section ww-tunnel-fields {
    display: grid;
    gap: 0.35rem;
  }
  .tunnel-section details > .row,
  .tunnel-section details > p {
    margin-top: 0.35rem;
  }
  .tunnel-section summary {
    cursor: pointer;
    font-size: 0.92rem;
  }
  .tunnel-section .preview {
    max-height: 22rem;
    overflow: auto;
  }
  .tunnel-section td.is-wrong {
    background: var(--wash);
    outline: 2px solid var(--alarm);
    outline-offset: -2px;
  }
  .tunnel-section td.is-wrong small {
    display: block;
    color: var(--alarm);
    white-space: normal;
    min-width: 12rem;
  }
  .tunnel-section tr.is-left-out td {
    text-decoration: line-through;
    color: var(--ink-soft);
  }
  .tunnel-section tr.is-left-out input {
    text-decoration: none;
  }
  ww-tunnel-view .report-title {
    display: none;
  }
  .tunnel-section .row .pair {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    gap: 0.3rem;
    align-items: center;
  }
  .tunnel-section select,
  .tunnel-section input[type="text"],
  .tunnel-section textarea {
    border: 1px solid var(--edge);
    border-radius: 2px;
    background: var(--sheet);
    padding: 0.25rem 0.4rem;
    min-width: 0;
    width: 100%;
  }
  .tunnel-section textarea {
    font-family: monospace;
    font-size: 0.85rem;
  }
  .tunnel-section button.is-quiet {
    border-color: transparent;
    background: none;
    color: var(--accent);
    padding: 0.2rem 0.4rem;
  }
  .tunnel-section .caution {
    border-left: 6px solid var(--ember);
  }
  .tunnel-section .caution {
    border-left: 6px solid var(--ember);
    padding: 0.4rem 0.7rem;
    background: var(--wash);
    font-size: 0.9rem;
  }
  .tunnel-section .scroll {
    overflow-x: auto;
  }
  .tunnel-section table.results {
    border-collapse: collapse;
    font-size: 0.86rem;
    font-variant-numeric: tabular-nums;
    min-width: 100%;
  }
  .tunnel-section table.results th,
  .tunnel-section table.results td {
    text-align: left;
    padding: 0.25rem 0.9rem 0.25rem 0;
    border-bottom: 1px solid var(--rule);
    vertical-align: top;
  }
  .tunnel-section table.results tbody th {
    font-weight: 400;
  }
  .tunnel-section table.results td {
    white-space: nowrap;
  }
  .tunnel-section .plots {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 1rem;
    /* A plot out of sight keeps its width until it is seen again. */
    overflow-x: clip;
  }
  .tunnel-section ww-plot {
    border: none;
    padding: 0;
  }
  .tunnel-section .pictures {
    display: none;
  }
  @media print {
    ww-tunnel-view .tunnel-layout,
    ww-tunnel-view .tunnel-column {
      display: block;
      padding: 0;
    }
    ww-tunnel-view .report-title {
      display: block;
      font-size: 13pt;
      margin: 0 0 2mm;
    }
    ww-tunnel-view ww-tunnel-data,
    .tunnel-section .fields,
    .tunnel-section ww-tunnel-fields,
    .tunnel-section .file,
    ww-tunnel-view .is-inputs,
    .tunnel-section .line,
    .tunnel-section button,
    .tunnel-section .plots {
      display: none;
    }
    .tunnel-section {
      border: none;
      padding: 1mm 0 2mm;
      font-size: 9pt;
      break-inside: avoid-page;
    }
    .tunnel-section .pictures {
      display: block;
    }
    .tunnel-section .pictures img {
      width: 100%;
      max-height: 95mm;
    }
    .tunnel-section .scroll {
      overflow: visible;
    }
    .tunnel-section table.results {
      font-size: 6.5pt;
    }
    .tunnel-section table.results th,
    .tunnel-section table.results td {
      padding-right: 0.4rem;
      white-space: normal;
    }
  }
`;
