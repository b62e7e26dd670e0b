import { css } from "lit";

/** Tables of figures, which scroll sideways where there is no room. */
export const tableStyles = css`
  .scroll {
    overflow-x: auto;
  }
  table {
    border-collapse: collapse;
    font-size: 0.86rem;
    font-variant-numeric: tabular-nums;
    min-width: 100%;
  }
  th,
  td {
    border-bottom: 1px solid var(--rule);
  }
  td small {
    display: block;
    color: var(--ink-soft);
  }
`;
