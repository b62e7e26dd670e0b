import { css } from "lit";

export const plotStyles = css`
  ww-plot {
    display: flex;
    flex-direction: column;
    min-width: 0;
    background: var(--sheet);
    border: 1px solid var(--rule);
    border-radius: 3px 14px 3px 3px;
    padding: 0.75rem 0.9rem 0.6rem;
  }
  ww-plot figure {
    margin: 0;
    display: contents;
  }
  ww-plot h3 {
    margin: 0;
    font-size: 1rem;
    letter-spacing: 0.01em;
  }
  ww-plot .plot-head {
    display: flex;
    justify-content: space-between;
    align-items: baseline;
    gap: 0.5rem;
    flex-wrap: wrap;
  }
  ww-plot .plot-actions {
    display: flex;
    gap: 0.15rem;
  }
  ww-plot .plot-actions button {
    font-size: 0.78rem;
    min-height: 1.6rem;
    padding: 0.2rem 0.5rem;
    border-color: transparent;
    background: none;
    color: var(--accent);
  }
  ww-plot .plot-actions button:hover {
    background: var(--wash);
  }
  ww-plot .plot-stack {
    position: relative;
    min-width: 0;
  }
  ww-plot .plot-area {
    position: relative;
    height: var(--plot-height);
    min-width: 0;
  }
  ww-plot .plot-overlay {
    position: absolute;
    inset: 0;
    pointer-events: none;
  }
  ww-plot .is-lively .scatterlayer {
    opacity: 0.22;
  }
  ww-plot .plot-legend {
    display: flex;
    flex-wrap: wrap;
    gap: 0 0.5rem;
    list-style: none;
    margin: 0 0 0.3rem;
    padding: 0;
  }
  ww-plot .plot-legend button {
    display: flex;
    align-items: center;
    gap: 0.35rem;
    border-color: transparent;
    background: none;
    padding: 0.1rem 0.3rem;
    min-height: 1.6rem;
    font-size: 0.8rem;
    text-align: left;
  }
  ww-plot .plot-legend button[aria-pressed="false"] {
    text-decoration: line-through;
    color: var(--ink-soft);
  }
  ww-plot .plot-legend svg {
    flex: none;
  }
  ww-plot .plot-area.is-empty {
    display: none;
  }
  ww-plot .plot-empty {
    color: var(--ink-soft);
    padding: 2.5rem 0;
    text-align: center;
  }
  ww-plot figcaption {
    font-size: 0.82rem;
    color: var(--ink-soft);
    line-height: 1.4;
  }
  ww-plot .is-stale .plot-area {
    opacity: 0.6;
  }
  ww-plot .table-scroll {
    overflow: auto;
    max-height: 22rem;
    margin-top: 0.5rem;
  }
  ww-plot table {
    border-collapse: collapse;
    font-size: 0.8rem;
    font-variant-numeric: tabular-nums;
    width: 100%;
  }
  ww-plot th,
  ww-plot td {
    text-align: left;
    padding: 0.15rem 0.6rem 0.15rem 0;
    border-bottom: 1px solid var(--rule);
    vertical-align: top;
  }
  ww-plot th {
    position: sticky;
    top: 0;
    background: var(--sheet);
  }
  @media print {
    ww-plot .plot-actions,
    ww-plot .table-scroll {
      display: none;
    }
  }
`;
