import { css } from "lit";

/** Heights of what stands above and below the desk on the first screen, px: the masthead, the row of details, the caution. */
export const sectionViewStyles = css`
  ww-section-view {
    display: block;
    padding: 0 20px 1.5rem;
    --panel-ground: none;
    --panel-border: none;
    --panel-padding: 0;
    --panel-heading: none;
    --panel-row: minmax(0, 1fr);
    --field-text: 12.5px;
    --field-small: 11.5px;
    --field-number: 54px;
    --field-unit: 50px;
  }
  ww-section-view .desk {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 10px 18px;
    padding-top: 10px;
  }
  ww-section-view .middle {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    grid-template-rows: 300px 84px 190px;
    gap: 6px;
    min-width: 0;
    min-height: 0;
  }
  ww-section-view ww-drag-curve {
    height: 420px;
  }
  ww-section-view .inputs .pin {
    padding: 12px 0 8px;
    font-size: 12px;
  }
  ww-section-view .inputs .pin button {
    background: var(--accent);
    border-color: var(--accent);
    color: var(--on-accent);
    font-weight: 700;
    font-size: 13px;
    padding: 5px 14px;
  }
  ww-section-view .inputs .pin button:disabled {
    opacity: 0.55;
  }
  ww-section-view .below {
    margin-top: 8px;
    border-top: 1px solid var(--rule);
  }
  ww-section-view .caution {
    margin: 0;
    font-size: 12px;
    line-height: 22px;
    color: var(--ink-soft);
  }
  ww-section-view .details {
    display: grid;
    gap: 12px;
    padding-top: 8px;
    --panel-ground: var(--sheet);
    --panel-border: 1px solid var(--rule);
    --panel-padding: 0.8rem 0.9rem 0.9rem;
    --panel-heading: flex;
    --panel-row: minmax(0, 1fr) minmax(0, 1.35fr);
    --field-text: 0.9rem;
    --field-small: 0.88rem;
    --field-number: 6.2rem;
    --field-unit: 3.9rem;
  }
  @media screen {
    ww-section-view .is-closed {
      display: none;
    }
  }
  @media (min-width: 900px) {
    ww-section-view .desk {
      grid-template-columns: 206px minmax(0, 1.35fr) minmax(0, 1fr);
      grid-template-rows: auto minmax(0, 1fr);
      grid-template-areas:
        "answer answer answer"
        "inputs middle curve";
      height: calc(100vh - 40px - 64px);
      min-height: 560px;
    }
    ww-section-view ww-answer {
      grid-area: answer;
    }
    ww-section-view .inputs {
      grid-area: inputs;
      overflow-y: auto;
      overflow-x: hidden;
      min-height: 0;
      scrollbar-width: thin;
    }
    ww-section-view .middle {
      grid-area: middle;
      grid-template-rows: minmax(0, 1.85fr) 86px minmax(0, 1fr);
    }
    ww-section-view ww-drag-curve {
      grid-area: curve;
      height: auto;
    }
  }
  @media (min-width: 1400px) {
    ww-section-view .desk {
      grid-template-columns: 236px minmax(0, 1.27fr) minmax(0, 1fr);
    }
  }
  @media (max-width: 899px) {
    ww-section-view {
      padding: 0 14px 1.5rem;
    }
    ww-section-view .inputs {
      order: 3;
    }
  }
  @media print {
    ww-section-view {
      padding: 0;
    }
    ww-section-view .desk {
      display: block;
      height: auto;
      min-height: 0;
    }
    ww-section-view .inputs,
    ww-section-view .middle,
    ww-section-view ww-drag-curve,
    ww-section-view .caution,
    ww-section-view ww-plot-board,
    ww-section-view ww-sweep-panel {
      display: none;
    }
    ww-section-view .below,
    ww-section-view .details {
      display: block;
      margin: 0;
      padding: 0;
      border: none;
    }
  }
`;
