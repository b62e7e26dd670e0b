import { css } from "lit";

/** The printed part of a view: dense enough for drawing, figures, plots, inputs and cautions on one A4 page. */
export const reportStyles = css`
  :host {
    display: none;
  }
  @media print {
    :host {
      display: block;
      font-size: 7pt;
      line-height: 1.25;
    }
    .plots {
      display: grid;
      grid-template-columns: 1fr 1fr;
      gap: 0 4mm;
    }
    img {
      display: block;
      width: 100%;
      max-height: 38mm;
      object-fit: contain;
      object-position: left;
    }
    img.flow {
      max-height: 27mm;
    }
    h2 {
      font-size: 8.5pt;
      margin: 1.5mm 0 0.5mm;
    }
    p {
      margin: 0;
    }
    .plots p {
      font-size: 6pt;
    }
    dl {
      display: grid;
      grid-template-columns: repeat(3, max-content minmax(0, 1fr));
      gap: 0.2mm 3mm;
      margin: 0;
    }
    dt {
      color: #444;
    }
    dd {
      margin: 0;
    }
    table {
      border-collapse: collapse;
      font-size: 6.2pt;
      line-height: 1.15;
      font-variant-numeric: tabular-nums;
      align-self: start;
    }
    .plots table {
      width: 100%;
    }
    th,
    td {
      text-align: left;
      vertical-align: top;
      padding: 0.1mm 3mm 0.1mm 0;
      border-bottom: 1px solid var(--rule);
    }
    tbody th {
      font-weight: 400;
    }
    ul {
      margin: 0;
      padding-left: 3mm;
      columns: 2;
      column-gap: 5mm;
      font-size: 6.2pt;
    }
  }
`;
