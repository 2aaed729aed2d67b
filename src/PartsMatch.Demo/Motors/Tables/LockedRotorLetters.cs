namespace PartsMatch.Demo.Motors.Tables;

/// <summary>Locked-rotor code letters (NEMA MG 1 10.37.2, NFPA 70 table 430.7(B)): kVA a horsepower, from the figure up to the next letter's.</summary>
public static class LockedRotorLetters
{
    private static readonly (double From, string Letter)[] Rows =
    [
        (0, "A"), (3.15, "B"), (3.55, "C"), (4, "D"), (4.5, "E"), (5, "F"), (5.6, "G"), (6.3, "H"), (7.1, "J"), (8, "K"),
        (9, "L"), (10, "M"), (11.2, "N"), (12.5, "P"), (14, "R"), (16, "S"), (18, "T"), (20, "U"), (22.4, "V"),
    ];

    /// <summary>The letter of so many kVA a horsepower.</summary>
    public static string Of(double kilovoltAmperesPerHorsepower) => Rows.Last(row => row.From <= kilovoltAmperesPerHorsepower).Letter;
}
