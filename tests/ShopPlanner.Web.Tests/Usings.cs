global using TestContext = Xunit.TestContext;
