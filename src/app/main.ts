import "./style/global.css";
import { resumeCarriedOffset } from "./compare/carriedOffset";
import { startAutosave } from "./engine/autosave";
import { showFirstScreen } from "./engine/firstScreen";
import { startLiveSolving } from "./engine/liveSolving";
import { listenForShortcuts } from "./engine/shortcuts";
import { keepOffline } from "./offline/keepOffline";
import { keepPreferences } from "./store/preferences";
import { followTheme } from "./style/theme";
import "./components/app/app";

keepPreferences();
followTheme();
listenForShortcuts();
const firstScreen = showFirstScreen();
startLiveSolving(firstScreen);
void firstScreen.then(startAutosave).then(resumeCarriedOffset).then(keepOffline);
