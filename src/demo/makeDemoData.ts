/** Renews all invented data in the folder cases. Every maker has a fixed seed: running it again changes nothing. */
import "./makeTunnelData";
import "./makeTrialData";
import "./makeMeasuredData";
