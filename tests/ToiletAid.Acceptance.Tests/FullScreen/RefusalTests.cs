namespace ToiletAid.Acceptance.Tests.FullScreen;

/// <summary>A key that is refused for the same reason as before must be heard, and readers say nothing of a row that stays as it is.</summary>
public sealed class RefusalTests
{
    [Fact]
    public void The_same_refusal_reads_differently_each_time_and_goes_with_its_cause()
    {
        var model = new Model();
        string[] said = [.. new[] { Keys.Enter, Keys.Enter, Keys.Enter, Keys.Enter, "0", Keys.Enter }.Select(key =>
        {
            model.Press(key);
            return model.Shell.Error;
        })];

        const string refusal = "Error: Nothing was typed.";
        Assert.Equal([refusal, "Again. " + refusal, refusal, "Again. " + refusal, string.Empty, string.Empty], said);
        Assert.StartsWith("2 of ", model.Answer, StringComparison.Ordinal);
    }
}
