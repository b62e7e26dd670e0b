import { css } from "lit";

export const mastheadStyles = css`
  :host {
    display: block;
  }
  .bar {
    display: flex;
    gap: 4px 14px;
    align-items: center;
    min-height: 40px;
    padding: 0 20px;
    background: var(--sheet);
    border-bottom: 1px solid var(--rule);
  }
  .brand {
    display: flex;
    align-items: center;
    gap: 8px;
    margin: 0;
    font-size: 16px;
    font-weight: 700;
    letter-spacing: 0.01em;
  }
  .brand svg {
    width: 34px;
    height: 26px;
  }
  .views {
    display: flex;
    gap: 2px;
  }
  .views button {
    border: none;
    background: none;
    border-radius: 2px 9px 2px 2px;
    font-weight: 700;
    font-size: 13px;
    padding: 5px 12px;
    min-height: 28px;
    color: var(--ink-soft);
  }
  .views button[aria-current="page"] {
    background: var(--accent);
    color: var(--on-accent);
  }
  .title {
    color: var(--ink-soft);
    font-size: 12.5px;
    flex: 1 1 4rem;
    min-width: 0;
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
    margin: 0;
  }
  .actions {
    display: flex;
    gap: 0;
    align-items: center;
  }
  .actions button,
  .actions select {
    border: none;
    background: none;
    font-size: 12.5px;
    padding: 4px 7px;
    min-height: 28px;
  }
  .actions button:disabled {
    color: var(--edge);
  }
  @media (max-width: 1120px) {
    .title {
      display: none;
    }
    .bar {
      justify-content: space-between;
    }
  }
  @media (max-width: 899px) {
    .bar {
      flex-wrap: wrap;
      padding: 4px 14px;
    }
    .views,
    .actions {
      overflow-x: auto;
      max-width: 100%;
      scrollbar-width: none;
    }
    .views button {
      min-height: 40px;
      padding: 5px 9px;
    }
    .actions button,
    .actions select {
      min-height: 36px;
    }
  }
  @media print {
    .bar {
      padding: 0 0 2mm;
      margin-bottom: 2mm;
      min-height: 0;
    }
    .title {
      display: block;
    }
    .actions,
    .views {
      display: none;
    }
  }
`;
