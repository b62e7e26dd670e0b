import { css } from "lit";

/** Rules and sizing of the puck: fields in columns, a verdict, messages and a file to choose. */
export const puckFormStyles = css`
  fieldset {
    grid-template-columns: repeat(auto-fit, minmax(min(18rem, 100%), 1fr));
    gap: 0.3rem 1.4rem;
    align-items: start;
  }
  fieldset > .buttons,
  fieldset > p {
    grid-column: 1 / -1;
    margin: 0;
  }
  .overall {
    margin: 0;
    font-size: 1.1rem;
    font-weight: 700;
  }
  .overall[data-verdict="fail"] {
    color: var(--alarm);
  }
  .overall[data-verdict="onlyIfMadeBetter"] {
    color: var(--ember);
  }
  ul.messages {
    margin: 0;
    padding-left: 1.1rem;
    font-size: 0.86rem;
    display: grid;
    gap: 0.25rem;
  }
  .file {
    display: inline-block;
    position: relative;
  }
  .file span.button {
    display: inline-block;
    border: 1px solid var(--edge);
    border-radius: 2px 9px 2px 2px;
    background: var(--sheet);
    padding: 0.35rem 0.8rem;
    font-size: 0.9rem;
    cursor: pointer;
  }
  .file input:focus-visible + span.button {
    outline: 3px solid var(--focus);
    outline-offset: 2px;
  }
  .row input[type="text"] {
    width: 100%;
    text-align: right;
  }
`;
