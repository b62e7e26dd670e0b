import { CHECKED_ERRORS } from "./checkedErrors";
import { checkedLevel } from "./errorData";
import { type ErrorKnowledge, knowledgeOf } from "./errorKnowledge";
import { conditionLevel, type LevelProcess } from "./levelProcess";

/** The engine's level errors as published values show them. */
export const CHECKED_LEVEL: LevelProcess = checkedLevel(CHECKED_ERRORS);

/** The same for what was never compared with anything: the whole spread of the errors, about no error. */
export const UNCHECKED_LEVEL: LevelProcess = conditionLevel([], CHECKED_ERRORS.parameters);

/** What published values say of the engine's errors, for a section that they hold for. */
export const CHECKED_KNOWLEDGE: ErrorKnowledge = knowledgeOf(CHECKED_LEVEL);

export const UNCHECKED_KNOWLEDGE: ErrorKnowledge = knowledgeOf(UNCHECKED_LEVEL);
