import { pageState } from "../store/pageState";
import { preferences } from "../store/preferences";

/** Keeps the document's theme equal to the person's choice, or to the system's when they chose none. */
export function followTheme(): void {
  const systemDark = matchMedia("(prefers-color-scheme: dark)");
  const apply = () => {
    const { theme } = preferences.value;
    const isDark = theme === "dark" || (theme === "system" && systemDark.matches);
    document.documentElement.dataset.theme = isDark ? "dark" : "light";
    pageState.patch({ isDark });
  };
  systemDark.addEventListener("change", apply);
  preferences.subscribe(apply);
  apply();
}
