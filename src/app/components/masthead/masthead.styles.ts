import { css } from "lit";

export const mastheadStyles = css`
  :host {
    display: block;
  }
  .bar {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem 0.9rem;
    align-items: center;
    padding: 0.6rem clamp(0.7rem, 2vw, 1.6rem);
    background: var(--sheet);
    border-bottom: 3px solid var(--accent);
  }
  .brand {
    display: flex;
    align-items: center;
    gap: 0.6rem;
    margin: 0;
    font-size: 1.3rem;
    font-weight: 700;
    letter-spacing: 0.01em;
  }
  .brand svg {
    width: 2.4rem;
    height: 2.1rem;
  }
  .views {
    display: flex;
    flex-wrap: wrap;
    gap: 0.2rem;
  }
  .views button {
    border-radius: 9px 9px 2px 2px;
    font-weight: 700;
    font-size: 0.95rem;
  }
  .views button[aria-current="page"] {
    background: var(--accent);
    border-color: var(--accent);
    color: var(--on-accent);
  }
  .title {
    color: var(--ink-soft);
    font-size: 0.92rem;
    flex: 1 1 12rem;
    min-width: 0;
    overflow-wrap: anywhere;
    margin: 0;
  }
  .actions {
    display: flex;
    flex-wrap: wrap;
    gap: 0.35rem;
    align-items: center;
  }
  .actions button,
  .actions select {
    font-size: 0.88rem;
    padding: 0.3rem 0.6rem;
  }
  @media print {
    .bar {
      padding: 0 0 2mm;
      margin-bottom: 2mm;
    }
    .actions,
    .views {
      display: none;
    }
  }
`;
