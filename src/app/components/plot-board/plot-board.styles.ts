import { css } from "lit";

export const plotBoardStyles = css`
  ww-plot-board {
    display: block;
    container-type: inline-size;
    min-width: 0;
  }
  ww-plot-board .board {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.9rem;
  }
  @container (min-width: 46rem) {
    ww-plot-board .board {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
    ww-plot-board .board > :last-child:nth-child(odd) {
      grid-column: 1 / -1;
    }
  }
  @container (min-width: 95rem) {
    ww-plot-board .board {
      grid-template-columns: repeat(3, minmax(0, 1fr));
    }
    ww-plot-board .board > :last-child:nth-child(3n + 2) {
      grid-column: 2 / -1;
    }
  }
  ww-plot-board .with-choice {
    display: flex;
    flex-direction: column;
    gap: 0.4rem;
    min-width: 0;
  }
  ww-plot-board .with-choice > ww-plot {
    flex: 1;
  }
  ww-plot-board .board-head {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem 1.2rem;
    align-items: center;
    margin: 0 0 0.6rem;
    font-size: 0.9rem;
  }
  ww-plot-board .board-head h2 {
    margin: 0;
    font-size: 1.08rem;
  }
  ww-plot-board select {
    border: 1px solid var(--edge);
    border-radius: 2px;
    background: var(--sheet);
    padding: 0.2rem 0.4rem;
  }
`;
