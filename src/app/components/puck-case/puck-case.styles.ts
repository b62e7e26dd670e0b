import { css } from "lit";

export const puckCaseStyles = css`
  .file span {
    display: inline-block;
    border: 1px solid var(--edge);
    border-radius: 2px 9px 2px 2px;
    padding: 0.35rem 0.8rem;
    cursor: pointer;
    font-size: 0.9rem;
  }
  .file:hover span {
    background: var(--wash);
  }
  .file input:focus-visible + span {
    outline: 3px solid var(--focus);
    outline-offset: 2px;
  }
  progress {
    width: 100%;
    height: 0.6rem;
    accent-color: var(--accent);
  }
  ul {
    margin: 0;
    padding-left: 1.1rem;
  }
`;
