import { css } from "lit";

export const reportStyles = css`
  :host {
    display: none;
  }
  @media print {
    :host {
      display: block;
      font-size: 8.5pt;
    }
    .plots {
      display: grid;
      grid-template-columns: 1fr 1fr;
      gap: 4mm;
    }
    img {
      display: block;
      width: 100%;
      max-height: 50mm;
      object-fit: contain;
      object-position: left;
    }
    h2 {
      font-size: 10pt;
      margin: 3mm 0 1mm;
    }
    p {
      margin: 0;
    }
    dl {
      display: grid;
      grid-template-columns: repeat(2, max-content 1fr);
      gap: 0.3mm 4mm;
      margin: 0;
    }
    dt {
      color: #444;
    }
    dd {
      margin: 0;
    }
    ul {
      margin: 0;
      padding-left: 4mm;
    }
  }
`;
