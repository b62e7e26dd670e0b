import { css } from "lit";

export const keyFiguresStyles = css`
  :host {
    display: block;
  }
  dl {
    margin: 0;
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(9.2rem, 1fr));
    gap: 1px;
    background: var(--sheet);
    border: 1px solid var(--rule);
    border-radius: 3px 14px 3px 3px;
    overflow: hidden;
  }
  dl > div {
    box-shadow: 0 0 0 1px var(--rule);
    padding: 0.5rem 0.7rem 0.55rem;
    min-width: 0;
  }
  dl > div.lead {
    grid-column: span 2;
    border-left: 6px solid var(--accent);
  }
  dt {
    font-size: 0.8rem;
    color: var(--ink-soft);
    display: flex;
    gap: 0.35rem;
    align-items: center;
    justify-content: space-between;
  }
  dd {
    margin: 0;
    font-size: 1.12rem;
    font-variant-numeric: tabular-nums;
    overflow-wrap: anywhere;
  }
  .lead dd {
    font-size: 1.7rem;
    line-height: 1.2;
  }
  dd small {
    display: block;
    font-size: 0.78rem;
    color: var(--ink-soft);
    line-height: 1.3;
  }
  .is-stale {
    opacity: 0.65;
  }
  .state {
    margin: 0 0 0.4rem;
    font-size: 0.88rem;
    min-height: 1.4em;
  }
  .state b {
    color: var(--alarm);
  }
  @media print {
    .state {
      margin: 0;
      min-height: 0;
    }
    dl {
      grid-template-columns: repeat(5, 1fr);
    }
    dl > div {
      padding: 0.6mm 1.5mm;
    }
    dd,
    .lead dd {
      font-size: 9pt;
    }
    dd small,
    dt {
      font-size: 6.5pt;
      line-height: 1.2;
    }
    ww-info-mark {
      display: none;
    }
  }
`;
