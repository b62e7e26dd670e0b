import { css } from "lit";

export const puckSearchInputsStyles = css`
  :host {
    display: block;
  }
  .inputs {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(19rem, 100%), 1fr));
    gap: 0.6rem 1rem;
    align-items: start;
  }
  fieldset {
    border: 1px solid var(--rule);
    border-radius: 2px;
    margin: 0;
    padding: 0.4rem 0.7rem 0.6rem;
    display: grid;
    gap: 0.35rem;
    min-width: 0;
  }
  legend {
    font-weight: 700;
    font-size: 0.9rem;
  }
  .line {
    display: flex;
    flex-wrap: wrap;
    gap: 0.3rem 0.6rem;
    align-items: center;
    font-size: 0.9rem;
  }
`;
