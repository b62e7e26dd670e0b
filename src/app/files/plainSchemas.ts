import { config } from "zod/v4/core";

// The page's content policy forbids code that is made from text, which schemas else try for speed as soon as they are
// made: this must come before the first of them.
config({ jitless: true });
