import { css } from "lit";

export const tourStyles = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 10px;
  }
  .lead {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr) auto;
    gap: 4px 18px;
    align-items: start;
  }
  .number {
    font:
      700 44px / 1 "Charter",
      "C059",
      "Georgia",
      "DejaVu Serif",
      serif;
    color: var(--accent);
  }
  .number small {
    font: 11px sans-serif;
    color: var(--ink-soft);
  }
  .sentence {
    margin: 0;
    font:
      clamp(18px, 1.6vw, 23px) / 1.28 "Charter",
      "Iowan Old Style",
      "C059",
      "Georgia",
      "DejaVu Serif",
      serif;
    min-height: 3.8em;
  }
  .moves {
    display: flex;
    gap: 4px;
  }
  .moves button {
    min-height: 30px;
  }
  .pictures {
    display: grid;
    grid-template-columns: minmax(0, 1.7fr) minmax(0, 1fr);
    gap: 16px;
    height: 34vh;
    min-height: 220px;
  }
  figure {
    margin: 0;
    display: flex;
    flex-direction: column;
    min-width: 0;
    min-height: 0;
  }
  figcaption {
    font-size: 11.5px;
    color: var(--ink-soft);
    line-height: 18px;
  }
  .picture {
    position: relative;
    flex: 1;
    min-height: 0;
    contain: strict;
    border-radius: 3px 14px 3px 3px;
    overflow: hidden;
  }
  canvas {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    display: block;
  }
  .stops {
    display: grid;
    grid-template-columns: repeat(6, minmax(0, 1fr));
    gap: 8px;
  }
  .stops button {
    text-align: left;
    padding: 4px 10px;
    min-height: 34px;
    font-size: 12px;
    line-height: 1.2;
  }
  .stops button[aria-current="step"] {
    background: var(--accent);
    border-color: var(--accent);
    color: var(--on-accent);
  }
  .curve {
    height: 30vh;
    min-height: 190px;
  }
  .curve .picture {
    border-radius: 0;
  }
  .curve .at {
    position: absolute;
    width: 26px;
    height: 26px;
    margin: -13px 0 0 -13px;
    border-radius: 50%;
    border: 2.5px solid var(--accent);
    background: var(--paper);
    color: var(--accent);
    font-weight: 700;
    font-size: 12px;
    padding: 0;
    line-height: 1;
  }
  .curve .at[aria-current="step"] {
    background: var(--accent);
    color: var(--on-accent);
  }
  .sliders {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 26px;
    font-size: 12.5px;
  }
  .sliders label {
    display: inline-flex;
    gap: 8px;
    align-items: center;
  }
  .sliders input {
    accent-color: var(--accent);
    width: 170px;
    min-height: 24px;
  }
  .note {
    margin: 0;
    font-size: 11.5px;
    color: var(--ink-soft);
  }
  @media (max-width: 899px) {
    .pictures,
    .lead {
      grid-template-columns: minmax(0, 1fr);
      height: auto;
    }
    .pictures figure {
      height: 220px;
    }
    .stops {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
  }
`;
