import { css } from "lit";

export const pinPanelStyles = css`
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
    text-align: right;
    padding: 0.25rem 0.6rem;
    border-bottom: 1px solid var(--rule);
    white-space: nowrap;
  }
  th:first-child {
    text-align: left;
    padding-left: 0;
    font-weight: 400;
    white-space: normal;
  }
  thead th {
    font-weight: 700;
    vertical-align: bottom;
  }
  td small {
    display: block;
    color: var(--ink-soft);
  }
  .swatch {
    display: inline-block;
    width: 1.4rem;
    border-top: 3px solid;
    vertical-align: middle;
    margin-right: 0.3rem;
  }
  @media print {
    :host(:not([has-pins])) {
      display: none;
    }
    button,
    .hint {
      display: none;
    }
    table {
      font-size: 7pt;
    }
    th,
    td {
      padding: 0.2mm 2mm;
    }
    td small {
      display: inline;
      margin-left: 2mm;
    }
  }
`;
