using Microsoft.Extensions.Configuration;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Tests.Hosting;

public sealed class SettingsCheckTests
{
    [Theory]
    [InlineData("Limits:Dpeth=3", "There is no setting Limits:Dpeth. Did you mean Limits:Depth?")]
    [InlineData("Limts:Depth=3", "There is no setting Limts:Depth. Did you mean Limits:Depth?")]
    [InlineData("PartsMatch:Limits:Depth=3", "There is no setting PartsMatch:Limits:Depth. Did you mean Limits:Depth?")]
    [InlineData("Limits:Bytes=3", "There is no setting Limits:Bytes. Did you mean Limits:RequestBytes or Limits:QueryBytes or Limits:VariablesBytes?")]
    [InlineData("PARTSMATCH_DTA=x", "There is no setting PARTSMATCH_DTA. Did you mean PARTSMATCH_DATA?")]
    [InlineData("Data:Zzzzzzzzzz=1", "There is no setting Data:Zzzzzzzzzz. The settings are: ")]
    [InlineData("Limits:Depth:Most=3", "There is no setting Limits:Depth:Most. Did you mean Limits:Depth?")]
    public void A_key_that_is_none_of_ours_is_told_with_the_nearest(string setting, string sentence) => Told(setting).ShouldStartWith(sentence);

    [Theory]
    [InlineData("Limits:Depth=129", "Limits:Depth is “129”; it takes a whole number from 1 to 128.")]
    [InlineData("limits:depth=2.5", "Limits:Depth is “2.5”; it takes a whole number from 1 to 128.")]
    [InlineData("Limits:Seconds=0,5", "Limits:Seconds is “0,5”; it takes a number from 0.001 to 3600.")]
    [InlineData("Limits:Seconds=NaN", "Limits:Seconds is “NaN”; it takes a number from 0.001 to 3600.")]
    [InlineData("Limits:Cost=99999999999", "Limits:Cost is “99999999999”; it takes a whole number from 1 to 2147483647.")]
    [InlineData("Access:OpenReads=yes", "Access:OpenReads is “yes”; it takes true or false.")]
    [InlineData("Access:OpenReads=", "Access:OpenReads is “”; it takes true or false.")]
    [InlineData("Logging:LogLevel:Default=loud", "Logging:LogLevel:Default is “loud”; it takes one of Trace, Debug, Information, Warning, Error, Critical, None.")]
    public void A_value_that_cannot_be_is_told_with_what_can(string setting, string sentence) => Told(setting).ShouldBe(sentence);

    [Theory]
    [InlineData("Limits:Depth=1", "Limits:Depth=128", "Limits:Seconds=0.001", "Access:OpenReads=True", "Data:Folder=x")]
    [InlineData("PATH=/bin", "Some:Other=1", "DATA=x", "PARTSMATCH_KEY=x", "Logging:Console:LogLevel:Default=Warning")]
    public void What_is_right_and_what_is_others_is_let_through(params string[] settings)
    {
        foreach (var setting in settings) Should.NotThrow(() => SettingsCheck.Demand(Configuration(setting), []), setting);
    }

    [Fact]
    public void A_section_that_nobody_reads_is_refused_where_it_was_typed_for_this_service()
    {
        Should.Throw<StartRefusedException>(() => SettingsCheck.Demand(Configuration("Foo:Bar=1"), ["--Foo:Bar=1"])).Message.ShouldStartWith("There is no setting Foo:Bar.");
        Should.NotThrow(() => SettingsCheck.Demand(Configuration("Kestrel:Limits:MaxConcurrentConnections=9"), ["--Kestrel:Limits:MaxConcurrentConnections=9", "--data=C:\\x", "--urls=http://127.0.0.1:1"]));
    }

    [Fact]
    public void All_that_is_wrong_is_told_at_once() => Told("Limits:Dpeth=3", "Limits:Cost=0").Split(Environment.NewLine).Length.ShouldBe(2);

    private static string Told(params string[] settings)
    {
        var refused = Should.Throw<StartRefusedException>(() => SettingsCheck.Demand(Configuration(settings), []));
        refused.ExitCode.ShouldBe(ExitCode.SettingsRefused);
        return refused.Message;
    }

    private static IConfiguration Configuration(params string[] settings) =>
        new ConfigurationBuilder().AddInMemoryCollection(settings.Select(setting => KeyValuePair.Create(setting.Split('=')[0], (string?)setting[(setting.IndexOf('=', StringComparison.Ordinal) + 1)..]))).Build();
}
