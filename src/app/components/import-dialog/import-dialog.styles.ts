import { css } from "lit";

export const importDialogStyles = css`
  .stack {
    display: grid;
    gap: 0.8rem;
  }
  .grid {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(10rem, 1fr));
    gap: 0.6rem;
  }
  .grid label {
    display: grid;
    gap: 0.2rem;
    font-size: 0.9rem;
  }
  textarea {
    width: 100%;
    min-height: 6rem;
    font-family: ui-monospace, monospace;
    font-size: 0.82rem;
  }
  .preview {
    background: var(--water);
    border: 1px solid var(--rule);
    display: block;
    width: 100%;
    height: 14rem;
  }
  .preview path {
    fill: var(--body-fill);
    stroke: var(--accent);
    stroke-width: 2;
    vector-effect: non-scaling-stroke;
  }
  p {
    margin: 0;
  }
`;
