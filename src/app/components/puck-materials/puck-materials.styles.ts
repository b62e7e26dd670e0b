import { css } from "lit";

export const puckMaterialsStyles = css`
  details {
    border-top: 1px solid var(--rule);
    padding-top: 0.5rem;
  }
  summary {
    cursor: pointer;
    font-size: 0.9rem;
  }
  .stack {
    margin-top: 0.5rem;
  }
  .line {
    display: flex;
    justify-content: space-between;
    gap: 0.5rem;
    margin: 0;
    font-size: 0.86rem;
    overflow-wrap: anywhere;
  }
  .row input {
    width: 100%;
  }
`;
