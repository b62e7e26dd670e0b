import "./style/global.css";
import { startLiveSolving } from "./engine/liveSolving";
import { openCase } from "./engine/openCase";
import { demoCases, loadDemoCase } from "./files/demoCases";
import { tell } from "./store/notices";
import { keepPreferences } from "./store/preferences";
import { followTheme } from "./style/theme";
import "./components/app/app";

const firstDemo = "harbour-league-puck.json";

keepPreferences();
followTheme();
startLiveSolving();
if (demoCases.some((demo) => demo.fileName === firstDemo)) {
  loadDemoCase(firstDemo).then(
    (text) => openCase(firstDemo, text),
    () => tell("warning", "The demo case could not be loaded."),
  );
}
