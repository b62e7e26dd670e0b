import { svg, type TemplateResult } from "lit";
import type { PictureName } from "../../gallery/galleryExamples";

const body = (x: number, y: number, width: number, height: number, radius: number) =>
  svg`<rect x=${x} y=${y} width=${width} height=${height} rx=${radius} fill="var(--body-fill)" stroke="var(--ink)" stroke-width="1.4"></rect>`;
const stream = (y: number, bend: number) =>
  svg`<path d="M0 ${y}C40 ${y} 44 ${y + bend} 80 ${y + bend}S130 ${y + bend * 0.6} 160 ${y + bend * 0.55}" fill="none" stroke="var(--water-line)"></path>`;
const streams = [8, 20, 70, 82].map((y) => stream(y, y < 45 ? -5 : 5));
const axes = svg`<path d="M16 8V78H154" fill="none" stroke="var(--edge)"></path>`;
const line = (d: string, color = "var(--accent)", dash = "none") =>
  svg`<path d=${d} fill="none" stroke=${color} stroke-width="2.4" stroke-linecap="round" stroke-dasharray=${dash}></path>`;
const points = (places: readonly (readonly [number, number])[], color: string) =>
  places.map(
    ([x, y]) =>
      svg`<rect x=${x - 3} y=${y - 3} width="6" height="6" fill="var(--sheet)" stroke=${color} stroke-width="1.4"></rect>`,
  );

/** What an example is about at a glance; drawings, not results. 160 x 90. */
export const galleryPictures: Readonly<Record<PictureName, () => TemplateResult>> = {
  section: () =>
    svg`${streams}${body(48, 30, 64, 30, 9)}<path d="M112 34C130 32 148 32 160 31V59C148 58 130 58 112 56Z" fill="var(--wake-fill)"></path>`,
  cylinder: () =>
    svg`${axes}${line("M18 24H78C92 24 92 68 104 68C120 68 130 56 152 54")}${points(
      [
        [32, 26],
        [56, 23],
        [84, 33],
        [96, 60],
        [124, 60],
        [146, 53],
      ],
      "var(--edge)",
    )}`,
  rough: () =>
    svg`${axes}${line("M18 22H52C62 22 62 48 72 46H152", "var(--ember)")}${line("M18 22H76C86 22 88 60 98 58H152")}${line("M18 22H100C110 22 112 70 122 70C136 70 140 62 152 60", "var(--edge)", "6 4")}`,
  edges: () =>
    svg`${body(8, 32, 40, 26, 1)}${body(60, 32, 40, 26, 6)}${body(112, 32, 40, 26, 13)}<path d="M8 76H152" stroke="var(--accent)" stroke-width="2.4"></path>`,
  pucks: () =>
    svg`${[14, 38, 62].map((y, i) => svg`${body(8, y, 50, 18, 4 + 2 * i)}<path d="M${84 - 8 * i} ${y + 9}H${132 - 14 * i}" stroke="var(--accent)" stroke-width="3"></path><circle cx=${108 - 12 * i} cy=${y + 9} r="4" fill="var(--accent)"></circle>`)}<path d="M112 8V86" stroke="var(--edge)" stroke-dasharray="4 3"></path>`,
  floor: () =>
    svg`${stream(14, -4)}${stream(28, -6)}${body(52, 44, 56, 22, 7)}<rect x="0" y="72" width="160" height="18" fill="var(--rule)"></rect>`,
  front: () =>
    svg`${axes}${line("M24 20C30 52 60 66 146 70")}${points(
      [
        [30, 34],
        [44, 52],
        [70, 62],
        [110, 68],
        [60, 30],
        [92, 44],
        [126, 50],
      ],
      "var(--accent)",
    )}`,
  tunnel: () =>
    svg`<path d="M0 12H50L64 22H100L114 12H160M0 78H50L64 68H100L114 78H160" fill="none" stroke="var(--ink)" stroke-width="1.6"></path>${[34, 45, 56].map((y) => stream(y, 0))}${body(70, 38, 24, 14, 4)}<path d="M82 52V68" stroke="var(--ink)"></path>`,
  trial: () =>
    svg`${["K", "R", "T"].map((code, i) => svg`<text x=${26 + 44 * i} y="22" font-size="13" font-weight="700" fill="var(--ink)">${code}</text>`)}${[36, 54, 72].map((y, j) => svg`${[3, 5, 2].map((score, i) => svg`<rect x=${14 + 44 * i} y=${y - 10} width="36" height="14" fill="none" stroke="var(--rule)"></rect><rect x=${14 + 44 * i} y=${y - 10} width=${6 * ((score + j) % 6) + 4} height="14" fill="var(--accent)" opacity="0.5"></rect>`)}`)}`,
  points: () =>
    svg`${axes}${line("M18 28H70C86 28 88 66 100 66C120 66 130 60 152 58")}${points(
      [
        [30, 26],
        [52, 30],
        [76, 34],
        [90, 56],
      ],
      "var(--ember)",
    )}${points(
      [
        [112, 52],
        [132, 50],
      ],
      "var(--ink)",
    )}`,
};
