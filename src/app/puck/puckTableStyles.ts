import { css } from "lit";

/** Tables of results in the puck view. */
export const puckTableStyles = css`
  th,
  td {
    text-align: left;
    padding: 0.25rem 0.9rem 0.25rem 0;
    vertical-align: top;
  }
  th[scope="row"] {
    font-weight: 400;
    min-width: 8.5rem;
  }
  td.number,
  th.number {
    text-align: right;
    white-space: nowrap;
  }
  thead th.number {
    white-space: normal;
    vertical-align: bottom;
  }
  td small {
    white-space: normal;
  }
  .is-stale {
    opacity: 0.65;
  }
  .state {
    margin: 0;
    font-size: 0.88rem;
  }
  .state b {
    color: var(--alarm);
  }
  .notes {
    margin: 0.5rem 0 0;
    padding-left: 1.1rem;
    font-size: 0.84rem;
    color: var(--ink-soft);
  }
`;
