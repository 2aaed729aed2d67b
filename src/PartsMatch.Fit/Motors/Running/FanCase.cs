namespace PartsMatch.Fit.Motors.Running;

/// <summary>Old and new motor on the same fan for one value of everything that is only known as a band.</summary>
/// <param name="OldRpm">Speed of the old motor, rpm.</param>
/// <param name="NewRpm">Speed of the new one, rpm.</param>
/// <param name="OldWatts">Shaft power of the old motor, W.</param>
/// <param name="NewWatts">Shaft power of the new one, W.</param>
/// <param name="OldShare">Shaft power of the old motor over its rated power.</param>
/// <param name="NewShare">Shaft power of the new one over its rated power.</param>
/// <param name="OldLoading">How hard the old motor is worked: 1 at its rated point.</param>
/// <param name="NewLoading">How hard the new one is worked.</param>
/// <param name="Airflow">Airflow, new over old.</param>
public readonly record struct FanCase(double OldRpm, double NewRpm, double OldWatts, double NewWatts, double OldShare, double NewShare, double OldLoading, double NewLoading, double Airflow);
