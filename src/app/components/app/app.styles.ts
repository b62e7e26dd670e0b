import { css } from "lit";

export const appStyles = css`
  ww-app {
    display: block;
  }
  ww-app [hidden] {
    display: none !important;
  }
  ww-app .loading {
    padding: 2rem;
    text-align: center;
  }
  ww-app footer {
    padding: 1rem clamp(0.6rem, 2vw, 1.6rem) 2rem;
    border-top: 1px solid var(--rule);
    font-size: 0.88rem;
    color: var(--ink-soft);
    max-width: 70rem;
  }
  ww-app footer h2 {
    font-size: 1rem;
    margin: 0 0 0.3rem;
    color: var(--ink);
  }
  ww-app footer ul {
    margin: 0;
    padding-left: 1.2rem;
  }
  @media print {
    ww-app footer {
      display: none;
    }
  }
`;
