import { css } from "lit";

export const outlinePreviewStyles = css`
  svg {
    background: var(--water);
    border: 1px solid var(--rule);
    display: block;
    width: 100%;
    height: 14rem;
  }
  path {
    vector-effect: non-scaling-stroke;
  }
  .solved {
    fill: var(--body-fill);
    stroke: var(--accent);
    stroke-width: 2;
  }
  .given {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1;
    stroke-dasharray: 3 3;
  }
  circle {
    fill: none;
    stroke: var(--ink);
    vector-effect: non-scaling-stroke;
  }
  p {
    margin: 0.3rem 0 0;
  }
`;
