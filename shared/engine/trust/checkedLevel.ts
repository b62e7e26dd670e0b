import { CHECKED_ERRORS } from "./checkedErrors";
import { checkedLevel } from "./errorData";
import { conditionLevel, type LevelProcess } from "./levelProcess";

/** The engine's level errors as published values show them. */
export const CHECKED_LEVEL: LevelProcess = checkedLevel(CHECKED_ERRORS);

/** The same for what was never compared with anything: the whole spread of the errors, about no error. */
export const UNCHECKED_LEVEL: LevelProcess = conditionLevel([], CHECKED_ERRORS.parameters);
