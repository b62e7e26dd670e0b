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
  p {
    margin: 0;
  }
`;
