import { css } from "lit";

/** Layout of the view of measurements, and the look that its sections share; those are in the light DOM for their plots. */
export const compareViewStyles = css`
  ww-compare-view {
    display: block;
  }
  ww-compare-view .compare-layout {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.9rem;
    padding: 0.9rem clamp(0.6rem, 2vw, 1.6rem) 1.5rem;
  }
  ww-compare-view .compare-column {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.9rem;
    align-content: start;
    min-width: 0;
  }
  @media (min-width: 900px) {
    ww-compare-view .compare-layout {
      grid-template-columns: 23rem minmax(0, 1fr);
    }
  }
  @media (min-width: 2200px) {
    ww-compare-view .compare-layout {
      grid-template-columns: 24rem minmax(0, 1fr);
    }
    ww-compare-view .is-outcome {
      grid-template-columns: minmax(0, 1.2fr) minmax(0, 1fr);
    }
    ww-compare-view ww-compare-plots {
      grid-row: span 3;
    }
  }
  .compare-section {
    background: var(--sheet);
    border: 1px solid var(--rule);
    border-radius: 3px 14px 3px 3px;
    padding: 0.8rem 0.9rem;
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.7rem;
    min-width: 0;
  }
  .compare-section h2,
  .compare-section h3 {
    margin: 0;
    line-height: 1.2;
  }
  .compare-section h2 {
    font-size: 1.08rem;
  }
  .compare-section h3 {
    font-size: 1rem;
  }
  .compare-section p {
    margin: 0;
    overflow-wrap: anywhere;
  }
  .compare-section .hint {
    color: var(--ink-soft);
    font-size: 0.84rem;
  }
  .compare-section .error {
    color: var(--alarm);
    font-size: 0.86rem;
  }
  .compare-section ul.error,
  .compare-section ul.hint {
    margin: 0;
    padding-left: 1.1rem;
    display: grid;
    gap: 0.2rem;
    overflow-wrap: anywhere;
  }
  .compare-section .line {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
    align-items: center;
  }
  .compare-section .line button,
  .compare-section .line .file span {
    font-size: 0.9rem;
  }
  .compare-section .file span {
    display: inline-block;
    border: 1px solid var(--edge);
    border-radius: 2px 9px 2px 2px;
    background: var(--sheet);
    padding: 0.35rem 0.8rem;
    cursor: pointer;
  }
  .compare-section .file:focus-within span {
    outline: 3px solid var(--focus);
    outline-offset: 2px;
  }
  .compare-section .row {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1.35fr);
    gap: 0.4rem;
    align-items: center;
    font-size: 0.9rem;
  }
  .compare-section .row .pair {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    gap: 0.3rem;
    align-items: center;
  }
  .compare-section select,
  .compare-section input[type="text"],
  .compare-section textarea {
    border: 1px solid var(--edge);
    border-radius: 2px;
    background: var(--sheet);
    padding: 0.25rem 0.4rem;
    min-width: 0;
    width: 100%;
  }
  .compare-section textarea {
    font-family: monospace;
    font-size: 0.85rem;
  }
  .compare-section .sets {
    list-style: none;
    margin: 0;
    padding: 0;
    display: grid;
    gap: 0.35rem;
  }
  .compare-section .sets li {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    gap: 0.3rem;
    align-items: start;
  }
  .compare-section .sets button {
    text-align: left;
    overflow-wrap: anywhere;
  }
  .compare-section .sets button[aria-pressed="true"] {
    border-left: 6px solid var(--accent);
    background: var(--wash);
  }
  .compare-section .sets small {
    display: block;
    color: var(--ink-soft);
  }
  .compare-section button.is-quiet {
    border-color: transparent;
    background: none;
    color: var(--accent);
    padding: 0.2rem 0.4rem;
  }
  .compare-section .verdict {
    font-size: 1.02rem;
    border-left: 6px solid var(--accent);
    padding: 0.3rem 0.7rem;
  }
  .compare-section .verdict.is-apart,
  .compare-section .caution {
    border-left: 6px solid var(--ember);
  }
  .compare-section .caution {
    padding: 0.4rem 0.7rem;
    background: var(--wash);
    font-size: 0.9rem;
  }
  .compare-section .scroll {
    overflow-x: auto;
  }
  .compare-section table.results {
    border-collapse: collapse;
    font-size: 0.86rem;
    font-variant-numeric: tabular-nums;
    min-width: 100%;
  }
  .compare-section table.results th,
  .compare-section table.results td {
    text-align: left;
    padding: 0.25rem 0.9rem 0.25rem 0;
    border-bottom: 1px solid var(--rule);
    vertical-align: top;
  }
  .compare-section table.results tbody th {
    font-weight: 400;
  }
  .compare-section .plots {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 1rem;
  }
  .compare-section ww-plot {
    border: none;
    padding: 0;
  }
  .compare-section progress {
    flex: 1 1 8rem;
    accent-color: var(--accent);
  }
  .compare-section .causes {
    list-style: none;
    margin: 0;
    padding: 0;
    display: grid;
    gap: 0.6rem;
  }
  .compare-section .causes li {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    gap: 0.5rem;
    align-items: start;
    border-bottom: 1px solid var(--rule);
    padding-bottom: 0.5rem;
    font-size: 0.92rem;
  }
  @media (max-width: 600px) {
    .compare-section .causes li {
      grid-template-columns: minmax(0, 1fr);
      justify-items: start;
    }
  }
  .compare-section .pictures,
  .compare-section.on-paper {
    display: none;
  }
  @media print {
    ww-compare-view .compare-layout,
    ww-compare-view .compare-column {
      display: block;
      padding: 0;
    }
    ww-compare-view .is-inputs,
    .compare-section .line,
    .compare-section button,
    .compare-section .plots {
      display: none;
    }
    ww-compare-view .compare-column > * {
      display: block;
    }
    .compare-section {
      display: block;
      border: none;
      padding: 1mm 0 2mm;
      font-size: 9pt;
    }
    .compare-section > * + * {
      margin-top: 1.5mm;
    }
    .compare-section .pictures,
    .compare-section.on-paper {
      display: block;
    }
    .compare-section .pictures > div {
      break-inside: avoid;
    }
    .compare-section .pictures img {
      width: auto;
      max-width: 100%;
      max-height: 85mm;
    }
    .compare-section .scroll {
      overflow: visible;
    }
    .compare-section table.results {
      font-size: 7.5pt;
    }
    .compare-section table.results tr,
    .compare-section .causes li {
      break-inside: avoid;
    }
  }
`;
