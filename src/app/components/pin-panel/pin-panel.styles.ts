import { css } from "lit";

export const pinPanelStyles = css`
  th,
  td {
    text-align: right;
    padding: 0.25rem 0.6rem;
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
  .swatch {
    display: inline-block;
    width: 1.4rem;
    border-top: 3px solid;
    vertical-align: middle;
    margin-right: 0.3rem;
  }
  .on-paper {
    display: none;
  }
  @media print {
    .on-paper {
      display: block;
      margin: 0;
      font-size: 7pt;
    }
    :host(:not([has-pins])) {
      display: none;
    }
    button,
    .hint {
      display: none;
    }
    table {
      font-size: 6.5pt;
      line-height: 1.25;
    }
    th,
    td {
      padding: 0.1mm 1.2mm;
    }
    h2 {
      font-size: 8.5pt;
    }
    section {
      padding: 0 2mm;
    }
    th:first-child {
      white-space: nowrap;
    }
    td small {
      display: inline;
      margin-left: 1mm;
    }
    td small .what,
    th:nth-child(n + 9),
    td:nth-child(n + 9) {
      display: none;
    }
  }
`;
