package org.staywright.web.api;

import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Tag;

@QuarkusTest
@Tag("server")
class SavedJobsTest extends SavedJobs {}
