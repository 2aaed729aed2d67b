namespace PartsMatch.Service.Hosting;

/// <summary>How the process ends, for scripts; docs/operations.md lists them.</summary>
public static class ExitCode
{
    public const int Success = 0;
    public const int Failed = 1;
    public const int BadInput = 2;
    public const int StoreRefused = 3;
    public const int SettingsRefused = 4;
    public const int SeedRefused = 5;
    public const int WeightsRefused = 6;
    public const int AddressRefused = 7;
    public const int NothingFits = 8;
    public const int ServiceUnreachable = 9;
    public const int RowsRefused = 10;
    public const int WeightsStay = 11;
    public const int Stopped = 12;
}
