import { css } from "lit";

export const infoMarkStyles = css`
  :host {
    display: inline-block;
    position: relative;
  }
  button {
    border: 1px solid var(--edge);
    border-radius: 50%;
    background: none;
    width: 1.35rem;
    height: 1.35rem;
    padding: 0;
    font: italic 700 0.8rem / 1 Georgia, serif;
    color: var(--accent);
    cursor: pointer;
  }
  button:focus-visible {
    outline: 3px solid var(--focus);
    outline-offset: 2px;
  }
  [popover] {
    max-width: min(26rem, calc(100vw - 2rem));
    border: 1px solid var(--edge);
    border-radius: 3px 14px 3px 3px;
    background: var(--sheet);
    color: var(--ink);
    padding: 0.9rem 1.1rem;
    font-size: 0.9rem;
    line-height: 1.45;
    box-shadow: 0 6px 24px rgb(0 0 0 / 0.25);
  }
  h4 {
    margin: 0 0 0.3rem;
    font-size: 1rem;
  }
  p {
    margin: 0.3rem 0 0;
  }
  .source {
    color: var(--ink-soft);
  }
`;
