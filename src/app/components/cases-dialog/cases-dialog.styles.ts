import { css } from "lit";

export const casesDialogStyles = css`
  .stack {
    display: grid;
    gap: 1.1rem;
  }
  .line {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
    align-items: center;
    margin-top: 0.4rem;
  }
  .line input {
    flex: 1 1 14rem;
  }
  fieldset {
    display: flex;
    flex-wrap: wrap;
    gap: 0.2rem 1rem;
    margin: 0.6rem 0 0;
    padding: 0.3rem 0.6rem 0.4rem;
    border: 1px solid var(--rule);
  }
  legend {
    font-size: 0.84rem;
  }
  ul {
    list-style: none;
    margin: 0.4rem 0 0;
    padding: 0;
  }
  li {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem 0.8rem;
    align-items: center;
    justify-content: space-between;
    padding: 0.35rem 0;
    border-bottom: 1px solid var(--rule);
  }
  li span {
    min-width: 0;
    overflow-wrap: anywhere;
  }
  li small {
    display: block;
    color: var(--ink-soft);
  }
`;
