import { css } from "lit";

export const glossaryStyles = css`
  dl {
    display: grid;
    grid-template-columns: max-content minmax(0, 1fr);
    gap: 0.35rem 1rem;
    margin: 0.6rem 0 1.2rem;
  }
  dt {
    font-weight: 700;
  }
  dd {
    margin: 0;
  }
  .unit {
    color: var(--ink-soft);
  }
  @media (max-width: 480px) {
    dl {
      grid-template-columns: minmax(0, 1fr);
      gap: 0.1rem;
    }
    dd {
      margin-bottom: 0.5rem;
    }
  }
`;
