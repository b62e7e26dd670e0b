import { Notifier } from "../store/notifier";
import type { Ribbon } from "./ribbon";

/** null before the first design is solved. */
export const ribbon = new Notifier<Ribbon | null>(null);
