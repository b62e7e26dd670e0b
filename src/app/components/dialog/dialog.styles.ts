import { css } from "lit";

export const dialogStyles = css`
  dialog {
    width: min(46rem, calc(100vw - 1.5rem));
    max-height: calc(100dvh - 1.5rem);
    border: 1px solid var(--edge);
    border-radius: 4px 22px 4px 4px;
    background: var(--sheet);
    color: var(--ink);
    padding: 0;
    overflow: auto;
  }
  dialog.is-wide {
    width: min(92rem, calc(100vw - 1.5rem));
    background: var(--paper);
  }
  dialog::backdrop {
    background: rgb(10 20 26 / 0.55);
  }
  .head {
    position: sticky;
    top: 0;
    z-index: 1;
    display: flex;
    justify-content: space-between;
    align-items: center;
    gap: 1rem;
    padding: 0.8rem 1.2rem;
    background: var(--sheet);
    border-bottom: 1px solid var(--rule);
  }
  .content {
    padding: 1rem 1.2rem 1.4rem;
  }
`;
