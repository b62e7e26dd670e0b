import { css } from "lit";

export const flowViewStyles = css`
  :host {
    display: flex;
    flex-direction: column;
    min-width: 0;
    min-height: 0;
  }
  .frame {
    flex: 1 1 0;
    min-height: 0;
    display: flex;
    border-radius: 3px 14px 3px 3px;
    overflow: hidden;
    background: var(--water);
  }
  .picture {
    position: relative;
    flex: 1 1 0;
    min-width: 0;
    contain: strict;
    touch-action: pan-y;
  }
  .drawing {
    position: absolute;
    inset: 0;
  }
  canvas {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    display: block;
  }
  .is-stale canvas {
    opacity: 0.55;
  }
  .floor,
  .local {
    position: absolute;
    margin: 0;
    font-size: 11.5px;
    line-height: 1.3;
    color: var(--ink);
    background: color-mix(in srgb, var(--water) 82%, transparent);
    padding: 1px 5px;
    pointer-events: none;
  }
  .floor {
    right: 8px;
    bottom: 34px;
  }
  .local {
    left: 8px;
    bottom: 8px;
    max-width: 48%;
    font-variant-numeric: tabular-nums;
  }
  .flows {
    position: absolute;
    top: 8px;
    right: 8px;
    display: flex;
    gap: 4px;
  }
  .flows button {
    font: inherit;
    font-size: 11.5px;
    line-height: 1.25;
    text-align: left;
    color: var(--ink);
    background: color-mix(in srgb, var(--sheet) 86%, transparent);
    border: 1px solid var(--edge);
    border-radius: 2px 9px 2px 2px;
    padding: 3px 10px 4px 8px;
    cursor: pointer;
  }
  .flows button span {
    display: block;
    color: var(--ink-soft);
  }
  .flows button[aria-pressed="true"] {
    border: 2px solid var(--accent);
    background: var(--sheet);
    padding: 2px 9px 3px 7px;
  }
  :focus-visible {
    outline: 3px solid var(--focus);
    outline-offset: 1px;
  }
  .saves {
    position: absolute;
    right: 6px;
    top: 50%;
    display: none;
  }
  .frame:hover .saves,
  .saves:focus-within {
    display: flex;
    flex-direction: column;
  }
  .saves button {
    border: none;
    background: none;
    color: var(--accent);
    font-size: 11px;
    padding: 3px 4px;
    cursor: pointer;
  }
  .unseen {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  @media (max-width: 899px) {
    .flows {
      left: 8px;
      right: auto;
      flex-wrap: wrap;
    }
  }
  @media print {
    :host {
      display: none;
    }
  }
`;
