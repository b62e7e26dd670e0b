import { css } from "lit";

/** A picture on a canvas with handles over it, its title in one line above. */
export const figureStyles = css`
  :host {
    display: flex;
    flex-direction: column;
    min-width: 0;
    min-height: 0;
  }
  .head {
    display: flex;
    flex-wrap: nowrap;
    gap: 2px 8px;
    align-items: baseline;
    font-size: 11.5px;
    line-height: 18px;
    color: var(--ink-soft);
    white-space: nowrap;
    overflow: hidden;
  }
  .head h2 {
    margin: 0;
    font-size: 13px;
    font-weight: 700;
    color: var(--ink);
  }
  .head .note {
    overflow: hidden;
    text-overflow: ellipsis;
    min-width: 0;
  }
  .head .right {
    margin-left: auto;
    color: var(--ink);
    font-weight: 700;
  }
  .picture {
    position: relative;
    flex: 1 1 0;
    min-height: 0;
    min-width: 0;
    contain: strict;
  }
  canvas {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    display: block;
  }
  .saves {
    display: inline-flex;
    gap: 2px;
  }
  .saves button {
    border: none;
    background: none;
    color: var(--accent);
    font-size: 11px;
    padding: 0 4px;
    min-height: 18px;
  }
  .unseen {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  @media print {
    :host {
      display: none;
    }
  }
`;
