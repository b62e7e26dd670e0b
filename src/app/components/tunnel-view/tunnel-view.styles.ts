import { css } from "lit";

/** Layout of the tunnel view, and the look that its sections share; those are in the light DOM for their plots. */
export const tunnelViewStyles = css`
  ww-tunnel-view {
    display: block;
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
  .tunnel-section ww-tunnel-correlations,
  .tunnel-section .correlation {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.35rem;
  }
  .tunnel-section .correlation {
    border-left: 3px solid var(--rule);
    padding-left: 0.6rem;
  }
  .tunnel-section .table-input {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.7rem;
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
  .tunnel-section .pictures {
    display: none;
  }
  @media print {
    ww-tunnel-view .report-title {
      display: block;
      font-size: 13pt;
      margin: 0 0 2mm;
    }
    ww-tunnel-view .is-data,
    ww-tunnel-view ww-tunnel-table,
    .tunnel-section .fields,
    .tunnel-section ww-tunnel-fields,
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
