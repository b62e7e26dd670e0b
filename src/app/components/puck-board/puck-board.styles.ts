import { css } from "lit";

export const puckBoardStyles = css`
  :host {
    display: block;
  }
  .scroll {
    overflow-x: auto;
  }
  table {
    border-collapse: collapse;
    width: 100%;
    min-width: 960px;
    font-size: 12px;
    font-variant-numeric: tabular-nums;
  }
  th {
    text-align: left;
    vertical-align: bottom;
    font-weight: 400;
    color: var(--ink-soft);
    font-size: 11px;
    padding: 2px 8px 5px 0;
    border-bottom: 2px solid var(--edge);
  }
  th button {
    all: unset;
    display: block;
    cursor: pointer;
    font-size: 12.5px;
    font-weight: 700;
    color: var(--ink);
    min-height: 24px;
    line-height: 24px;
  }
  th button:focus-visible,
  td button:focus-visible {
    outline: 3px solid var(--focus);
  }
  .number {
    text-align: right;
  }
  td {
    padding: 3px 8px 3px 0;
    height: 43px;
    border-bottom: 1px solid var(--rule);
    vertical-align: middle;
    line-height: 1.3;
  }
  tbody tr:last-child td {
    border-bottom: 2px solid var(--edge);
  }
  tr.is-candidate td {
    background: var(--sheet);
  }
  tr.is-candidate td:first-child {
    box-shadow: inset 4px 0 0 var(--accent);
  }
  td.outline {
    width: 118px;
    padding-left: 9px;
  }
  td.outline svg {
    display: block;
    width: 108px;
    height: 42px;
  }
  td small {
    display: block;
    color: var(--ink-soft);
    font-size: 11px;
  }
  .name {
    font-weight: 700;
    font-size: 13px;
  }
  .does {
    display: flex;
    gap: 8px;
  }
  .does button {
    all: unset;
    cursor: pointer;
    font-size: 11px;
    color: var(--accent);
    text-decoration: underline dotted;
    min-height: 20px;
  }
  .attention {
    color: var(--ember);
    font-weight: 700;
  }
  .strong {
    font-weight: 700;
    color: var(--ink);
  }
  svg.cell {
    display: block;
    overflow: visible;
  }
  svg text {
    font-size: 10.5px;
    fill: var(--ink-soft);
  }
  @media print {
    table {
      min-width: 0;
      font-size: 7pt;
    }
    .does {
      display: none;
    }
  }
`;
