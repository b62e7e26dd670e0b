import { css } from "lit";

export const guideStyles = css`
  ol {
    padding-left: 1.3rem;
    margin: 0 0 1rem;
    display: grid;
    gap: 0.9rem;
  }
  li::marker {
    font-weight: 700;
    color: var(--accent);
  }
  p {
    margin: 0.2rem 0 0;
  }
`;
