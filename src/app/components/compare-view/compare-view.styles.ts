import { css } from "lit";

/** Layout of the view of measurements, and the look that its sections share; those are in the light DOM for their plots. */
export const compareViewStyles = css`
  ww-compare-view {
    display: block;
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
  .compare-section .verdict.is-apart {
    border-left: 6px solid var(--ember);
  }
  .compare-section .plots {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 1rem;
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
