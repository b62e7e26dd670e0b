import { css } from "lit";

/** The report of a player trial on paper: after the view's own rules, which it replaces there. */
export const trialPrintStyles = css`
  @media print {
    ww-trial-view .is-inputs,
    ww-trial-scores,
    .trial-section .line,
    .trial-section .line.screen,
    .trial-section button,
    .trial-section ww-plot,
    .trial-section .screen,
    .trial-section details.screen {
      display: none;
    }
    .trial-section {
      border: none;
      padding: 1mm 0 2mm;
      font-size: 9pt;
      gap: 1.2mm;
    }
    ww-trial-order,
    ww-trial-drag {
      display: block;
      break-inside: avoid-page;
    }
    .trial-section h3 {
      break-after: avoid-page;
    }
    .trial-section .paper {
      display: grid;
      gap: 2.5mm;
    }
    .trial-section .paper > div {
      display: grid;
      grid-template-columns: 84mm minmax(0, 1fr);
      grid-template-areas: "title title" "verdict verdict" "test test" "hint hint" "picture pairs" "standings standings";
      gap: 0.8mm 4mm;
      break-inside: avoid-page;
    }
    .trial-section .paper h3 {
      grid-area: title;
    }
    .trial-section .paper .verdict {
      grid-area: verdict;
      gap: 0.3mm;
      padding-block: 0;
    }
    .trial-section .paper .test {
      grid-area: test;
    }
    .trial-section .paper .hint {
      grid-area: hint;
    }
    .trial-section .paper img {
      grid-area: picture;
      width: 100%;
    }
    .trial-section .paper .is-pairs {
      grid-area: pairs;
    }
    .trial-section .paper .is-standings {
      grid-area: standings;
    }
    .trial-section .beside {
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
      gap: 6mm;
    }
    .trial-section .part {
      gap: 0.8mm;
      break-inside: avoid-page;
    }
    .trial-section .caution,
    .trial-section .verdict {
      padding: 0.6mm 2.5mm;
      font-size: 9pt;
    }
    .trial-section .scroll {
      overflow: visible;
    }
    .trial-section table {
      font-size: 7.5pt;
      line-height: 1.2;
    }
    .trial-section th,
    .trial-section td {
      padding: 0.4mm 2mm 0.4mm 0;
    }
  }
`;
