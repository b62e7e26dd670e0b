import { css } from "lit";

/** Layout of the puck view, and the look that its sections with plots share; those are in the light DOM. */
export const puckViewStyles = css`
  ww-puck-view {
    display: block;
  }
  @media screen {
    ww-puck-view .is-off {
      display: none;
    }
  }
  ww-puck-view .puck-answer {
    padding: 10px 20px 6px;
  }
  ww-puck-view .puck-board {
    padding: 0 20px 14px;
  }
  ww-puck-view .puck-board .caution {
    margin: 8px 0 0;
    font-size: 12px;
    color: var(--ink-soft);
  }
  ww-puck-view button.is-quiet {
    border: none;
    background: none;
    padding: 0 2px;
    color: var(--accent);
    font: inherit;
    text-decoration: underline;
  }
  @media (min-width: 900px) {
    ww-puck-view .puck-layout[data-step="search"],
    ww-puck-view .puck-layout[data-step="motion"] {
      grid-template-areas: "bench flow";
      grid-template-rows: auto;
    }
    ww-puck-view .puck-layout[data-step="choose"],
    ww-puck-view .puck-layout[data-step="search"] {
      grid-template-columns: minmax(0, 1fr);
      grid-template-areas: "flow";
    }
    ww-puck-view .puck-layout[data-step="drag"] {
      grid-template-areas: "bench flow";
      grid-template-rows: auto;
    }
    ww-puck-view .puck-layout[data-step="drag"] .is-body,
    ww-puck-view .puck-layout[data-step="motion"] .is-body,
    ww-puck-view .puck-layout[data-step="search"] .is-body {
      display: none;
    }
  }
  @media (min-width: 900px) {
    ww-puck-view .puck-layout {
      grid-template-columns: 22rem minmax(0, 1fr);
      grid-template-areas:
        "bench body"
        "bench flow";
      grid-template-rows: auto 1fr;
    }
    ww-puck-view .is-bench {
      grid-area: bench;
    }
    ww-puck-view .is-body {
      grid-area: body;
    }
    ww-puck-view .is-flow {
      grid-area: flow;
    }
  }
  @media (min-width: 2200px) {
    ww-puck-view .puck-layout {
      grid-template-columns: 23rem minmax(0, 1fr) minmax(0, 1.3fr);
      grid-template-areas: "bench body flow";
      grid-template-rows: auto;
    }
  }
  .puck-section .head {
    display: flex;
    justify-content: space-between;
    align-items: center;
    gap: 0.5rem;
  }
  .puck-section .marks {
    display: flex;
    gap: 0.3rem;
  }
  .puck-section .body {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.7rem;
  }
  .puck-section .choices {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem 1.2rem;
    align-items: center;
    font-size: 0.9rem;
  }
  .puck-section select,
  .puck-section input[type="text"] {
    border: 1px solid var(--edge);
    border-radius: 2px;
    background: var(--sheet);
    padding: 0.2rem 0.4rem;
    max-width: 100%;
    width: auto;
  }
  .puck-section td small {
    display: block;
    color: var(--ink-soft);
    min-width: 15rem;
  }
  .puck-section .notes {
    margin: 0;
    padding-left: 1.1rem;
    font-size: 0.84rem;
    color: var(--ink-soft);
    display: grid;
    gap: 0.2rem;
  }
  .puck-section .state b {
    color: var(--alarm);
  }
  .puck-section .is-stale {
    opacity: 0.65;
  }
  .puck-section .plots {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(24rem, 100%), 1fr));
    gap: 1rem;
  }
  .puck-section .fields {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(19rem, 100%), 1fr));
    gap: 0.3rem 1.4rem;
  }
  .puck-section .line {
    font-size: 0.9rem;
  }
  .puck-section fieldset {
    border: 1px solid var(--rule);
    border-radius: 2px;
    margin: 0;
    padding: 0.4rem 0.7rem 0.6rem;
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.35rem;
    min-width: 0;
  }
  @media print {
    ww-puck-view .puck-board,
    ww-puck-view .puck-answer {
      display: none;
    }
    ww-puck-view .puck-column {
      display: none;
    }
    ww-puck-view .puck-column.is-body {
      display: block;
    }
    ww-puck-view .is-body > :not(ww-puck-drawing, ww-puck-report) {
      display: none;
    }
  }
`;
