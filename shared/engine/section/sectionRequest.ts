import type { SectionSpec } from "../geometry/sectionSpec";
import type { PlacedSection } from "./placedSection";
import type { Stream } from "./stream";

/** One section in one stream, as it is worked on. Plain data. */
export type SectionRequest = PlacedSection<SectionSpec> & Stream;
