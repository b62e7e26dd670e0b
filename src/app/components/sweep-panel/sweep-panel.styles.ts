import { css } from "lit";

export const sweepPanelStyles = css`
  ww-sweep-panel {
    display: block;
    margin-top: 0.9rem;
    min-width: 0;
  }
  ww-sweep-panel section {
    background: var(--sheet);
    border: 1px solid var(--rule);
    border-radius: 3px 14px 3px 3px;
    padding: 0.8rem 0.9rem;
    display: grid;
    gap: 0.7rem;
    min-width: 0;
  }
  ww-sweep-panel h2 {
    margin: 0;
    font-size: 1.08rem;
  }
  ww-sweep-panel .inputs {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(20rem, 100%), 1fr));
    gap: 0.6rem 1.2rem;
  }
  ww-sweep-panel fieldset {
    border: 1px solid var(--rule);
    border-radius: 2px;
    margin: 0;
    padding: 0.4rem 0.7rem 0.6rem;
    display: grid;
    gap: 0.35rem;
    min-width: 0;
  }
  ww-sweep-panel select,
  ww-sweep-panel input {
    border: 1px solid var(--edge);
    border-radius: 2px;
    background: var(--sheet);
    padding: 0.25rem 0.4rem;
    max-width: 100%;
  }
  ww-sweep-panel .count input {
    width: 5rem;
    text-align: right;
  }
  ww-sweep-panel .line {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
    align-items: center;
    font-size: 0.9rem;
  }
  ww-sweep-panel progress {
    flex: 1 1 8rem;
    accent-color: var(--accent);
  }
  ww-sweep-panel .error {
    color: var(--alarm);
    font-size: 0.86rem;
    margin: 0;
  }
  ww-sweep-panel ww-plot {
    border: none;
    padding: 0;
  }
  @media print {
    ww-sweep-panel {
      display: none;
    }
  }
`;
