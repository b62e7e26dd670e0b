import { css } from "lit";

export const noticeAreaStyles = css`
  :host {
    position: fixed;
    inset: auto 1rem 1rem auto;
    width: min(26rem, calc(100vw - 2rem));
    z-index: 20;
    display: grid;
    gap: 0.5rem;
  }
  .notice {
    display: flex;
    gap: 0.75rem;
    align-items: start;
    justify-content: space-between;
    background: var(--ink);
    color: var(--paper);
    border-left: 6px solid var(--accent);
    border-radius: 2px 12px 2px 2px;
    padding: 0.7rem 0.8rem 0.7rem 0.9rem;
  }
  .notice.warning {
    border-left-color: var(--focus);
  }
  .notice button {
    background: none;
    border-color: currentColor;
    color: inherit;
    font-size: 0.85rem;
  }
  .notice button:hover:not(:disabled) {
    background: var(--ink-soft);
  }
  @media print {
    :host {
      display: none;
    }
  }
`;
