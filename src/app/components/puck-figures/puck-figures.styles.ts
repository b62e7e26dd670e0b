import { css } from "lit";

export const puckFiguresStyles = css`
  .allowed,
  .verdict {
    white-space: nowrap;
  }
  .verdict[data-verdict="fail"] {
    color: var(--alarm);
    font-weight: 700;
  }
  .verdict[data-verdict="onlyIfMadeBetter"] {
    color: var(--ember);
    font-weight: 700;
  }
`;
