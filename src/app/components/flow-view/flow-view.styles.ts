import { css } from "lit";

export const flowViewStyles = css`
  :host {
    display: block;
    min-width: 0;
  }
  .frame {
    background: var(--water);
    border: 1px solid var(--rule);
    border-radius: 3px 22px 3px 3px;
    overflow: hidden;
  }
  svg {
    display: block;
    width: 100%;
    touch-action: none;
  }
  .stream {
    fill: none;
    stroke: var(--water-line);
    stroke-width: 1.1;
  }
  .wake {
    fill: var(--wake-fill);
    opacity: 0.75;
  }
  .shear {
    fill: none;
    stroke: var(--bubble);
    stroke-width: 1.8;
    stroke-dasharray: 9 4 2 4;
  }
  .body {
    fill: var(--body-fill);
    stroke: none;
  }
  .part {
    fill: none;
    stroke-linecap: round;
  }
  .laminar {
    stroke: var(--laminar);
    stroke-width: 2.4;
  }
  .bubble {
    stroke: var(--bubble);
    stroke-width: 5;
    stroke-dasharray: 0.1 7;
  }
  .turbulent {
    stroke: var(--turbulent);
    stroke-width: 5.5;
    stroke-linecap: butt;
  }
  .base {
    stroke: var(--ink-soft);
    stroke-width: 1.6;
    stroke-dasharray: 5 4;
    stroke-linecap: butt;
  }
  .mark {
    fill: var(--sheet);
    stroke: var(--ink);
    stroke-width: 1.8;
  }
  .floor rect {
    fill: var(--wash);
  }
  .floor path {
    stroke: var(--edge);
    stroke-width: 2;
  }
  .handle {
    cursor: grab;
    outline: none;
  }
  .handle .reach {
    fill: transparent;
  }
  .handle .knob {
    fill: var(--sheet);
    stroke: var(--accent);
    stroke-width: 2.6;
  }
  .handle .arm {
    stroke: var(--accent);
    stroke-width: 1.2;
    stroke-dasharray: 3 3;
  }
  .handle:hover .knob,
  .handle.is-held .knob {
    fill: var(--accent);
  }
  .handle:focus-visible .ring {
    stroke: var(--focus);
    stroke-width: 3;
    fill: none;
  }
  .handle .ring {
    fill: none;
    stroke: none;
  }
  .words {
    font-size: 13px;
    fill: var(--ink);
    paint-order: stroke;
    stroke: var(--water);
    stroke-width: 4px;
    stroke-linejoin: round;
  }
  .is-stale {
    opacity: 0.55;
  }
  .legend {
    display: flex;
    flex-wrap: wrap;
    gap: 0.2rem 1.1rem;
    margin: 0.45rem 0 0;
    padding: 0;
    list-style: none;
    font-size: 0.84rem;
    color: var(--ink-soft);
  }
  .legend li {
    display: flex;
    align-items: center;
    gap: 0.4rem;
  }
  .legend svg {
    width: 34px;
    height: 14px;
    flex: none;
  }
  .local {
    min-height: 1.5em;
    margin: 0.3rem 0 0;
    font-size: 0.88rem;
    font-variant-numeric: tabular-nums;
  }
  @media print {
    .frame svg {
      height: 31mm;
    }
    .legend {
      font-size: 6.5pt;
    }
    .handle,
    .local {
      display: none;
    }
  }
`;
