import { css } from "lit";

/** What the document's style sheet says of controls, for components with a shadow root. */
export const controlStyles = css`
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  button,
  select,
  input,
  textarea {
    font: inherit;
    color: inherit;
  }
  button {
    border: 1px solid var(--edge);
    border-radius: 2px 9px 2px 2px;
    background: var(--sheet);
    padding: 0.35rem 0.8rem;
    cursor: pointer;
  }
  button:hover:not(:disabled) {
    background: var(--wash);
  }
  button.is-main {
    background: var(--accent);
    border-color: var(--accent);
    color: var(--on-accent);
  }
  /* The wash of other buttons would take the light text's contrast away. */
  button.is-main:hover:not(:disabled) {
    background: var(--ink);
    border-color: var(--ink);
    color: var(--sheet);
  }
  button.is-quiet {
    border-color: transparent;
    background: none;
    color: var(--accent);
    padding: 0.2rem 0.4rem;
  }
  button:disabled {
    cursor: default;
    color: var(--ink-soft);
    border-style: dashed;
  }
  select,
  input:not([type]),
  input[type="text"],
  input[type="number"],
  textarea {
    border: 1px solid var(--edge);
    border-radius: 2px;
    background: var(--sheet);
    padding: 0.3rem 0.45rem;
    min-width: 0;
    max-width: 100%;
  }
  :focus-visible {
    outline: 3px solid var(--focus);
    outline-offset: 2px;
  }
  h2,
  h3,
  h4 {
    margin: 0;
    line-height: 1.2;
  }
  h2 {
    font-size: 1.08rem;
  }
  h3 {
    font-size: 1rem;
  }
  a {
    color: var(--accent);
  }
  .error {
    color: var(--alarm);
    font-size: 0.84rem;
    margin: 0.15rem 0 0;
  }
  .hint {
    color: var(--ink-soft);
    font-size: 0.82rem;
    margin: 0.15rem 0 0;
  }
  .unseen {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
`;
