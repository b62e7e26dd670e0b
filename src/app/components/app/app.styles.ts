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
  ww-app .layout {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.9rem;
    padding: 0.9rem clamp(0.6rem, 2vw, 1.6rem) 1.5rem;
  }
  ww-app .stream-area {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    align-content: start;
    gap: 0.6rem;
    min-width: 0;
  }
  ww-app .bench-area {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.9rem;
    align-content: start;
    min-width: 0;
  }
  @media (min-width: 900px) {
    ww-app .layout {
      grid-template-columns: 22rem minmax(0, 1fr);
      grid-template-areas:
        "bench stream"
        "bench plots";
      grid-template-rows: auto 1fr;
    }
    ww-app .bench-area {
      grid-area: bench;
      align-self: start;
      position: sticky;
      top: 0.9rem;
      max-height: calc(100vh - 1.8rem);
      overflow-y: auto;
      padding: 4px;
      margin: -4px;
    }
    ww-app .stream-area {
      grid-area: stream;
    }
    ww-app .plots-area {
      grid-area: plots;
    }
  }
  @media (min-width: 2200px) {
    ww-app .layout {
      grid-template-columns: 23rem minmax(0, 0.95fr) minmax(0, 1.25fr);
      grid-template-areas: "bench stream plots";
      grid-template-rows: auto;
    }
  }
  ww-app .plots-area {
    min-width: 0;
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
    ww-app .layout {
      display: block;
      padding: 0;
    }
    ww-app .bench-area,
    ww-app .plots-area,
    ww-app footer {
      display: none;
    }
    ww-app .stream-area {
      display: block;
    }
  }
`;
