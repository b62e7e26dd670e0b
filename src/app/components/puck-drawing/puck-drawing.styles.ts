import { css } from "lit";

export const puckDrawingStyles = css`
  :host {
    display: block;
  }
  figure {
    margin: 0;
    background: var(--sheet);
    border: 1px solid var(--rule);
    border-radius: 3px 14px 3px 3px;
    padding: 0.8rem 0.9rem;
  }
  .views {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(16rem, 100%), 1fr));
    gap: 0.5rem 1rem;
    align-items: center;
  }
  svg {
    width: 100%;
    max-height: 24rem;
    display: block;
  }
  .coat {
    fill: var(--body-fill);
  }
  .core {
    fill: var(--bubble);
  }
  .core-line {
    stroke: var(--ink);
    stroke-width: 0.25;
  }
  .hatch {
    stroke: var(--sheet);
    stroke-width: 0.6;
  }
  .outline {
    fill: none;
    stroke: var(--ink);
    stroke-width: 0.35;
  }
  .thin {
    fill: none;
    stroke: var(--ink-soft);
    stroke-width: 0.2;
  }
  .hidden-line {
    fill: none;
    stroke: var(--ink-soft);
    stroke-width: 0.25;
    stroke-dasharray: 1.6 0.9;
  }
  .axis {
    stroke: var(--ink-soft);
    stroke-width: 0.2;
    stroke-dasharray: 4 1 0.8 1;
  }
  text {
    fill: var(--ink);
    font-family: inherit;
    font-variant-numeric: tabular-nums;
  }
  figcaption {
    display: flex;
    flex-wrap: wrap;
    gap: 0.2rem 1rem;
    margin-top: 0.5rem;
    font-size: 0.84rem;
    color: var(--ink-soft);
  }
  .key {
    display: inline-block;
    width: 0.9rem;
    height: 0.9rem;
    border: 1px solid var(--edge);
    vertical-align: -0.1rem;
    margin-right: 0.3rem;
  }
  .key.is-core {
    background: var(--bubble);
  }
  .key.is-coat {
    background: var(--body-fill);
  }
  .is-stale {
    opacity: 0.6;
  }
  b {
    color: var(--alarm);
  }
  @media print {
    .views {
      display: grid;
      grid-template-columns: 1fr 1fr;
    }
    figure {
      padding: 1mm 2mm;
    }
    svg {
      height: 28mm;
    }
    figcaption {
      margin: 0;
      font-size: 6.5pt;
    }
  }
`;
