import { css } from "lit";

export const sectionViewStyles = css`
  ww-section-view .layout {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.9rem;
    padding: 0.9rem clamp(0.6rem, 2vw, 1.6rem) 1.5rem;
  }
  ww-section-view .stream-area {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    align-content: start;
    gap: 0.6rem;
    min-width: 0;
  }
  ww-section-view .bench-area {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.9rem;
    align-content: start;
    min-width: 0;
  }
  @media (min-width: 900px) {
    ww-section-view .layout {
      grid-template-columns: 22rem minmax(0, 1fr);
      grid-template-areas:
        "bench stream"
        "bench plots";
      grid-template-rows: auto 1fr;
    }
    ww-section-view .bench-area {
      grid-area: bench;
      align-self: start;
      position: sticky;
      top: 0.9rem;
      max-height: calc(100vh - 1.8rem);
      overflow-y: auto;
      padding: 4px;
      margin: -4px;
    }
    ww-section-view .stream-area {
      grid-area: stream;
    }
    ww-section-view .plots-area {
      grid-area: plots;
    }
  }
  @media (min-width: 2200px) {
    ww-section-view .layout {
      grid-template-columns: 23rem minmax(0, 0.95fr) minmax(0, 1.25fr);
      grid-template-areas: "bench stream plots";
      grid-template-rows: auto;
    }
  }
  ww-section-view .plots-area {
    min-width: 0;
  }
  @media print {
    ww-section-view .layout {
      display: block;
      padding: 0;
    }
    ww-section-view .bench-area,
    ww-section-view .plots-area {
      display: none;
    }
    ww-section-view .stream-area {
      display: block;
    }
  }
`;
