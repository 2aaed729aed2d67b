using PartsMatch.Service.Commands;
using PartsMatch.Service.Hosting;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Commands;

public sealed class HostSettingsTests
{
    [Theory]
    [InlineData("serve --Limits:Depth=5 --data x", "--Limits:Depth=5", "", "serve --data x")]
    [InlineData("--Limits:Depth 5 --Access:OpenReads true", "--Limits:Depth=5 --Access:OpenReads=true", "", "")]
    [InlineData("--Limits:Depth --data x", "", "--Limits:Depth", "--data x")]
    [InlineData("--Limits:Depth", "", "--Limits:Depth", "")]
    [InlineData("--data:x --data=C:\\x --urls=http://127.0.0.1:1", "", "", "--data:x --data=C:\\x --urls=http://127.0.0.1:1")]
    [InlineData("find --old a:b", "", "", "find --old a:b")]
    public void Settings_of_the_host_are_taken_in_one_word_or_two(string typed, string settings, string incomplete, string rest)
    {
        var host = HostSettings.Of(Words(typed), new HashSet<string> { "--data", "--urls" });
        host.Settings.ShouldBe(Words(settings));
        host.Incomplete.ShouldBe(Words(incomplete));
        host.Rest.ShouldBe(Words(rest));
    }

    [Theory]
    [InlineData("--Limits:Depth 0")]
    [InlineData("serve --Limits:Depth 0")]
    public async Task The_host_is_given_what_was_typed_in_two_words(string commandLine)
    {
        using var folder = new TestFolder();
        var ran = await Ran.Of(commandLine, folder.Path);
        (ran.Exit, ran.Errors).ShouldBe((ExitCode.SettingsRefused, "Limits:Depth is “0”; it takes a whole number from 1 to 128."));
    }

    [Theory]
    [InlineData("serve")]
    [InlineData("find")]
    public async Task A_value_that_is_called_as_a_command_is_passed_on(string word)
    {
        // An address comes to nothing, so that the sentence tells which value the host was given.
        var errors = new StringWriter();
        using var folder = new TestFolder();
        (await CommandLine.RunAsync(["--data", folder.Path, "--urls", word], TextWriter.Null, errors, TestContext.Current.CancellationToken)).ShouldBe(ExitCode.AddressRefused);
        errors.ToString().ShouldStartWith($"{word} cannot be listened at");
    }

    [Theory]
    [InlineData(null, null)]
    [InlineData("", null)]
    [InlineData("partsmatch_a-B_9", "partsmatch_a-B_9")]
    public void A_key_is_shown_as_it_is(string? text, string? shown) => Asking.KeyOf(text)?.Parameter.ShouldBe(shown);

    [Theory]
    [InlineData("two words")]
    [InlineData("schlüssel")]
    [InlineData("line\nend")]
    public void What_can_be_no_key_is_refused_before_anything_is_opened(string text) =>
        Should.Throw<StartRefusedException>(() => Asking.KeyOf(text)).Message.ShouldBe("PARTSMATCH_KEY holds no key: a key is one word of plain letters, digits and signs.");

    private static string[] Words(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
}
