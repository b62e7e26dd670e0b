import { Notifier } from "../store/notifier";
import type { PublishedGroup } from "./publishedFor";

/** Published drag by source, section and stream; empty until it is loaded, which is after the first figures. */
export const publishedGroups = new Notifier<readonly PublishedGroup[]>([]);

let loading: Promise<void> | null = null;

/** Loads them once. A failed load is tried again next time; the curve is drawn without them. */
export function loadPublishedGroups(): Promise<void> {
  loading ??= import("../reference/publishedDrag.json").then(
    (module) => {
      publishedGroups.value = module.default as unknown as readonly PublishedGroup[];
    },
    () => {
      loading = null;
    },
  );
  return loading;
}
